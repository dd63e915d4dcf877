/** A page over plain HTTP on a network has no cryptography of its own; `localhost` and HTTPS have. */
export const canKeepPin = (): boolean => typeof crypto !== 'undefined' && crypto.subtle !== undefined;

/** PBKDF2 with HMAC-SHA-256, 256 bits, as base64. */
export async function derivePin(pin: string, salt: string, iterations: number): Promise<string> {
  const key = await crypto.subtle.importKey('raw', new TextEncoder().encode(pin), 'PBKDF2', false, ['deriveBits']);
  const bits = await crypto.subtle.deriveBits(
    { name: 'PBKDF2', hash: 'SHA-256', salt: new TextEncoder().encode(salt), iterations },
    key,
    256,
  );
  return btoa(String.fromCharCode(...new Uint8Array(bits)));
}

/** Sixteen random bytes: the length OWASP and NIST SP 800-132 ask for at least. From memory. */
export const freshSalt = (): string => btoa(String.fromCharCode(...crypto.getRandomValues(new Uint8Array(16))));
