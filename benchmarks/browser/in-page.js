// Put into each page before its own scripts: measures there what cannot be measured from outside.
// Times are milliseconds by the page's own clock, from the beginning of its loading.

(() => {
  let longTasks = [];
  let gaps = [];
  let watching = false;
  new PerformanceObserver((list) => {
    if (watching) for (const { duration } of list.getEntries()) longTasks.push(duration);
  }).observe({ type: "longtask" });

  const nextFrame = () => new Promise(requestAnimationFrame);
  const scrolled = () => document.scrollingElement ?? document.documentElement;

  window.measured = {
    /** From now on: tasks over 50 ms, and how far apart the frames come. */
    watch() {
      [longTasks, gaps, watching] = [[], [], true];
      let last = null;
      const frame = (now) => {
        if (!watching) return;
        if (last !== null) gaps.push(now - last);
        last = now;
        requestAnimationFrame(frame);
      };
      requestAnimationFrame(frame);
    },

    /** What was seen since. Long tasks are told a little after they happen. */
    async seen() {
      await new Promise((done) => setTimeout(done, 100));
      watching = false;
      return { longTasks, gaps };
    },

    /** When something fits a selector, and has been painted. */
    async painted(selector) {
      while (!document.querySelector(selector)) await nextFrame();
      await new Promise((done) => requestAnimationFrame(() => setTimeout(done, 0)));
      return performance.now();
    },

    /** When the next press was made. */
    pressed: () =>
      new Promise((done) => addEventListener("click", () => done(performance.now()), { capture: true, once: true })),

    /** From the top to the bottom, so many pixels a frame. */
    async scrollThrough(pixels) {
      let frames = 0;
      while (scrolled().scrollTop + innerHeight < scrolled().scrollHeight - 2) {
        window.scrollBy(0, pixels);
        await nextFrame();
        frames++;
      }
      return frames;
    },

    /**
     * Every pointer move from now on: `script` is how long all that listens to it took, `painted` how long until the frame
     * that shows the answer was made.
     */
    moves() {
      const all = [];
      let at = null;
      const before = () => {
        at = performance.now();
      };
      const after = () => {
        if (at === null) return;
        const move = { script: performance.now() - at, painted: null };
        const from = at;
        all.push(move);
        requestAnimationFrame(() => {
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => {
            move.painted = performance.now() - from;
          };
          port2.postMessage(null);
        });
      };
      // The window hears a move first of all on its way in, and last of all on its way out.
      addEventListener("pointermove", before, { capture: true });
      addEventListener("pointermove", after);
      return all;
    },
  };
})();
