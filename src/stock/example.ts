/** The made-up model of the list to fill in, by which it is known again. */
export const EXAMPLE_ID = 'example-1';
export const EXAMPLE_NAME = 'Example shoe (delete these lines)';
