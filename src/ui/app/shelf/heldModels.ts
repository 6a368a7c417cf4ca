/** Ids of the models that pages of this browser now write; empty where the browser cannot tell. */
export async function heldModels(): Promise<ReadonlySet<string>> {
  const locks = navigator.locks as LockManager | undefined;
  const { held = [] } = (await locks?.query()) ?? {};
  return new Set(held.flatMap(({ name }) => /^raftmargin model (.*)$/.exec(name ?? '')?.[1] ?? []));
}
