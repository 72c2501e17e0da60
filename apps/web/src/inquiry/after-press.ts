/** Whether a pointer is down; a tap says so by its mouse events, after the finger is up again. */
let isDown = false;
let waiting: (() => void)[] = [];

const press = (): void => {
  isDown = true;
};

/** The click of a press comes before what waited for its end. */
const release = (): void => {
  setTimeout(() => {
    isDown = false;
    const due = waiting;
    waiting = [];
    for (const run of due) run();
  });
};

if (typeof document !== 'undefined') {
  for (const kind of ['pointerdown', 'mousedown']) document.addEventListener(kind, press, true);
  for (const kind of ['pointerup', 'mouseup', 'pointercancel', 'dragend'])
    document.addEventListener(kind, release, true);
}

/**
 * Does something that may move what is on the page: at once, or when the pointer that is down is up again. A press takes the
 * focus from a field; what the field then says must not push away the button that is being pressed.
 */
export function afterPress(run: () => void): void {
  if (isDown) waiting.push(run);
  else run();
}
