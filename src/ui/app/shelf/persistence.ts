/** The browser's storage; undefined where a browser, or a page without encryption, has none to ask. */
function storage(): StorageManager | undefined {
  return (navigator as { readonly storage?: StorageManager }).storage;
}

/** Whether the browser has promised not to clear what is kept when the disk is full; undefined where it cannot say. */
export async function isPersisted(): Promise<boolean | undefined> {
  try {
    return await storage()?.persisted();
  } catch {
    return undefined;
  }
}

/** Asks for that promise, unless it is given; some browsers ask the person. */
export async function askToPersist(): Promise<void> {
  if ((await isPersisted()) !== false) return;
  try {
    await storage()?.persist();
  } catch {
    // It stays as it is, which the shelf says.
  }
}
