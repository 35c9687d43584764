// Before anything is drawn: light or dark, as this device was told or as it is itself.
document.documentElement.dataset.look =
  (() => {
    try {
      const chosen = localStorage.getItem("wareboard-look");
      return chosen === "light" || chosen === "dark" ? chosen : null;
    } catch {
      return null;
    }
  })() ?? (matchMedia("(prefers-color-scheme: dark)").matches ? "dark" : "light");
