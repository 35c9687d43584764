/** Hands a text to the device as a file, as a download. */
export function saveFile(name: string, type: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // The download has begun by then, and needs the address no more.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
