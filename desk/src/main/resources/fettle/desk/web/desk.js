// Small conveniences over pages that work without them.
const all = (selector, root = document) => [...root.querySelectorAll(selector)];

// A slider beside a value writes its number into the value's text.
document.addEventListener("input", (event) => {
  const slide = event.target.closest?.("input[data-pattern]");
  if (slide) {
    const field = slide.form.elements.namedItem(slide.dataset.for);
    field.value = slide.dataset.pattern.replace("#", slide.value);
    mark(field);
  } else if (event.target.matches?.("[data-stands]")) {
    mark(event.target);
  } else if (event.target.matches?.("input[data-member]")) {
    const told = event.target.closest("label").querySelector("output");
    const per = Number(told.dataset.per);
    told.value = per === 1 ? event.target.value : (Number(event.target.value) / per).toFixed(2);
  }
});

// A value that differs from the book is drawn in marking blue.
function mark(field) {
  field.classList.toggle("differs", field.value !== field.dataset.stands);
}
all("[data-stands]").forEach(mark);

// Copies the address of a result.
document.addEventListener("click", (event) => {
  const button = event.target.closest?.("button[data-copy]");
  if (button) {
    const address = new URL(button.dataset.copy, location.href).href;
    navigator.clipboard.writeText(address).then(
      () => { button.textContent = "copied"; },
      () => { button.textContent = "select the address instead"; });
  }
});

// The picture in three dimensions is loaded only when somebody wants it.
const solid = document.querySelector("details[data-scene]");
if (solid) {
  const open = () => {
    if (solid.open && !solid.dataset.loaded) {
      solid.dataset.loaded = "yes";
      import("/assets/solid.js")
        .then((m) => m.show(document.getElementById("solid"), solid.dataset.scene))
        .catch(() => { document.getElementById("solid").textContent =
          "This browser cannot draw in three dimensions; the side elevation shows the same lathe."; });
    }
  };
  solid.addEventListener("toggle", open);
  open();
}

// A drawn train turns as its slider says, or by itself until it is stopped.
all("[data-turning]").forEach((figure) => {
  const slider = figure.querySelector("input[type=range]");
  const [told, travelled] = figure.querySelectorAll("output");
  const run = figure.querySelector("[data-run]");
  const pieces = all(".moving", figure);
  let frame = 0;
  let last = 0;
  let turned = Number(slider.value) / 360;
  const show = () => {
    told.value = Math.round(turned * 360);
    if (travelled) travelled.value = (turned * Number(travelled.dataset.travel)).toFixed(2);
    for (const piece of pieces) {
      const slide = Number(piece.dataset.slide);
      piece.setAttribute("transform", slide
        ? `translate(${slide * turned} 0)`
        : `rotate(${(Number(piece.dataset.turns) * turned * 360) % 360} ${piece.dataset.about})`);
    }
  };
  const step = (now) => {
    turned = (turned + Math.min(100, now - last) / 1000 / 16) % 2;
    last = now;
    slider.value = turned * 360;
    show();
    frame = requestAnimationFrame(step);
  };
  const halt = () => { cancelAnimationFrame(frame); frame = 0; run.textContent = run.dataset.run; };
  slider.addEventListener("input", () => { halt(); turned = Number(slider.value) / 360; show(); });
  run.classList.remove("hidden");
  figure.querySelector("button.plain").classList.add("hidden");
  run.addEventListener("click", () => {
    if (frame) return halt();
    run.textContent = run.dataset.halt;
    last = performance.now();
    frame = requestAnimationFrame(step);
  });
  show();
});

// On the side elevation a member is dragged along the bed; its slider follows, and with it all else.
const elevation = document.getElementById("elevation");
if (elevation) {
  let held = null;
  let dragged = false;
  elevation.addEventListener("pointerdown", (event) => {
    const member = event.target.closest("a[data-slider]");
    const slider = member && document.getElementsByName("at." + member.dataset.slider)[0];
    if (slider?.dataset.axis !== "Z" || event.button !== 0) return;
    const svg = member.ownerSVGElement;
    held = { slider, from: event.clientX, at: Number(slider.value), moved: false, scale: svg.viewBox.baseVal.width / svg.getBoundingClientRect().width };
  });
  addEventListener("pointermove", (event) => {
    if (!held) return;
    const way = (event.clientX - held.from) * held.scale;
    if (!held.moved && Math.abs(event.clientX - held.from) < 6) return;
    held.moved = true;
    held.slider.value = held.at + way;
    held.slider.dispatchEvent(new Event("input", { bubbles: true }));
  });
  const drop = () => { dragged = Boolean(held?.moved); held = null; };
  addEventListener("pointerup", drop);
  addEventListener("pointercancel", drop);
  // A drag is no touch: the click that ends it leads nowhere.
  addEventListener("click", (event) => {
    if (dragged) event.preventDefault();
    dragged = false;
  }, true);
  elevation.addEventListener("dragstart", (event) => event.preventDefault());
}
