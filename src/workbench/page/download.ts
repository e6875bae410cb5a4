/** Offers a file as the browser's downloads do. */
export function download(file: Uint8Array, name: string): void {
  const address = URL.createObjectURL(
    new Blob([new Uint8Array(file)], { type: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet" }),
  );
  Object.assign(document.createElement("a"), { href: address, download: name }).click();
  // The browser has taken the file by the time it next draws.
  setTimeout(() => {
    URL.revokeObjectURL(address);
  }, 10_000);
}
