/** Reads from an element that has the light colours, whatever the page's are. */
export function onLightGround<T>(read: (element: Element) => T): T {
  const ground = document.createElement('div');
  ground.className = 'chart light-ground';
  ground.hidden = true;
  document.body.append(ground);
  try {
    return read(ground);
  } finally {
    ground.remove();
  }
}
