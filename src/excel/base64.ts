/** `btoa` takes text of one character a byte, in pieces that fit the call stack. */
export function base64(bytes: Uint8Array): string {
  const step = 0x8000;
  let text = "";
  for (let at = 0; at < bytes.length; at += step) text += String.fromCharCode(...bytes.subarray(at, at + step));
  return btoa(text);
}
