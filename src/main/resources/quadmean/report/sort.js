"use strict";
// Turns the column heads of every table into buttons that sort its rows: up, down, and back as printed.
// Lines with totals stand in the foot and stay there. Without this script the page lacks nothing else.
document.addEventListener("DOMContentLoaded", () => {
  const steps = { "": "ascending", ascending: "descending", descending: "" };

  function number(cell) {
    const text = cell.firstChild ? cell.firstChild.textContent : "";
    const found = /[-−]?\d[\d,]*(\.\d+)?(e[-+]?\d+)?/i.exec(text);
    return found ? Number(found[0].replace(/,/g, "").replace("−", "-")) : NaN;
  }

  function compare(a, b, isNumber, sign) {
    if (!isNumber) {
      return sign * a.textContent.localeCompare(b.textContent, "en", { numeric: true });
    }
    const x = number(a);
    const y = number(b);
    if (isNaN(x) || isNaN(y)) {
      return isNaN(x) - isNaN(y); // what is unknown stands last either way
    }
    return sign * (x - y);
  }

  function sort(table, head, printed) {
    const step = steps[head.getAttribute("aria-sort") || ""];
    table.querySelectorAll("thead th").forEach((h) => h.removeAttribute("aria-sort"));
    const rows = printed.slice();
    if (step) {
      head.setAttribute("aria-sort", step);
      const at = head.cellIndex;
      const sign = step === "ascending" ? 1 : -1;
      const isNumber = head.classList.contains("num");
      rows.sort((a, b) => compare(a.cells[at], b.cells[at], isNumber, sign));
    }
    table.tBodies[0].append(...rows);
  }

  document.querySelectorAll(".scroll table").forEach((table) => {
    const printed = Array.from(table.tBodies[0].rows);
    if (printed.length < 2) {
      return;
    }
    table.querySelectorAll("thead th").forEach((head) => {
      const button = document.createElement("button");
      button.type = "button";
      button.append(...head.childNodes);
      button.addEventListener("click", () => sort(table, head, printed));
      head.append(button);
    });
  });
});
