/**
 * The two functions this house uses of papaparse, so that its published types, which bring all of Node's with them,
 * stay out of the pipeline.
 */
declare module 'papaparse' {
  interface Row {
    readonly data: readonly string[];
    readonly errors: readonly { readonly type: string; readonly code: string }[];
    /** Where the next row starts, in characters. */
    readonly meta: { readonly cursor: number };
  }
  interface Config {
    readonly delimiter: string;
    readonly newline: '\n';
    readonly fastMode: false;
    readonly step: (row: Row, parser: { abort(): void }) => void;
  }
  const papaparse: {
    parse(text: string, config: Config): void;
    unparse(
      rows: readonly (readonly string[])[],
      config: { readonly delimiter: string; readonly newline: string },
    ): string;
  };
  export default papaparse;
}
