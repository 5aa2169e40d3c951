(() => {
  "use strict";
  const tools = document.getElementById("tools");
  const { reader, find, found, clear } = tools.elements;
  const sheets = [...document.querySelectorAll("section.sheet")];
  const links = [...document.querySelectorAll("nav li")];
  const lines = "tbody tr:not(.group), tfoot tr, li, dl > div, section > p, .columns p, aside, figcaption";

  // Where a device keeps nothing, the page works all the same.
  const memory = (() => { try { return window.localStorage; } catch { return null; } })();
  const key = name => `${tools.dataset.issue} | ${name}`;
  const recall = name => { try { return memory.getItem(key(name)); } catch { return null; } };
  const remember = (name, value) => {
    try { value ? memory.setItem(key(name), value) : memory.removeItem(key(name)); } catch { /* kept until the page closes */ }
  };

  const ticks = sheets.flatMap(sheet => [...sheet.querySelectorAll(".tick input")].map((box, index) => ({ box, name: `${sheet.id} ${index}` })));
  for (const { box, name } of ticks) {
    box.checked = recall(name) === "1";
    box.addEventListener("change", () => remember(name, box.checked ? "1" : ""));
  }

  const isFor = sheet => reader.value === "all" || (sheet.dataset.readers ?? "all").split(" ").some(name => name === "all" || name === reader.value);

  const show = () => {
    const wanted = find.value.trim().toLowerCase();
    let [hits, pages] = [0, 0];
    sheets.forEach((sheet, index) => {
      let here = 0;
      for (const line of sheet.querySelectorAll(lines)) {
        const isHit = wanted === "" || line.textContent.toLowerCase().includes(wanted);
        line.classList.toggle("missed", !isHit);
        here += isHit;
      }

      sheet.hidden = !isFor(sheet) || (wanted !== "" && here === 0);
      if (links[index]) { links[index].hidden = sheet.hidden; }
      if (!sheet.hidden) { [hits, pages] = [hits + here, pages + 1]; }
    });
    found.value = wanted === "" ? "" : tools.dataset.found.replace("{0}", hits).replace("{1}", pages);
  };

  const next = () => {
    const hits = sheets.filter(sheet => !sheet.hidden).flatMap(sheet => [...sheet.querySelectorAll(lines)].filter(line => !line.classList.contains("missed")));
    const hit = hits[(hits.findIndex(line => line.classList.contains("here")) + 1) % hits.length];
    document.querySelectorAll(".here").forEach(line => line.classList.remove("here"));
    hit?.classList.add("here");
    hit?.scrollIntoView({ block: "center" });
  };

  // A table that is wider than the screen scrolls by keys, too.
  const reach = () => document.querySelectorAll(".wide").forEach(wide => {
    wide.scrollWidth > wide.clientWidth ? wide.setAttribute("tabindex", "0") : wide.removeAttribute("tabindex");
  });

  reader.value = recall("reader") ?? "all";
  if (reader.selectedIndex < 0) { reader.value = "all"; }
  reader.addEventListener("change", () => { remember("reader", reader.value); show(); reach(); });
  find.addEventListener("input", show);
  find.addEventListener("keydown", event => { if (event.key === "Escape") { find.value = ""; show(); } });
  tools.addEventListener("submit", event => { event.preventDefault(); if (find.value.trim() !== "") { next(); } });
  clear.addEventListener("click", () => {
    if (window.confirm(tools.dataset.question)) {
      for (const { box, name } of ticks) { box.checked = false; remember(name, ""); }
    }
  });
  window.addEventListener("resize", reach);
  find.value = "";
  tools.hidden = false;
  show();
  reach();
})();
