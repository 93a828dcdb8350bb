// The lathe in three dimensions: each member a group on the member it sits on, so that moving a
// slide carries everything that stands on it. X is towards the operator, Y up, Z to the tailstock.
import * as THREE from "/assets/three.module.min.js";

const unit = { X: new THREE.Vector3(1, 0, 0), Y: new THREE.Vector3(0, 1, 0), Z: new THREE.Vector3(0, 0, 1) };

export async function show(place, address) {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error("no scene");
  await showScene(place, await answer.json());
}

async function showScene(place, data) {
  const ink = getComputedStyle(document.documentElement);
  const colour = (name) => new THREE.Color(ink.getPropertyValue(name).trim());
  const renderer = new THREE.WebGLRenderer({ antialias: true, alpha: true });
  place.replaceChildren(renderer.domElement);
  renderer.domElement.setAttribute("role", "img");
  renderer.domElement.setAttribute("aria-label", "The lathe in three dimensions; the list of members says the same in words");
  const scene = new THREE.Scene();
  // Seen from the operator the tailstock is at the right: the book's axes are drawn mirrored in Z.
  const lathe = new THREE.Group();
  lathe.scale.z = -1;
  scene.add(lathe);
  const groups = new Map();
  const seats = new Map();
  const targets = [];
  for (const member of data.members) {
    const group = new THREE.Group();
    groups.set(member.name, group);
    seats.set(member.name, member);
    for (const solid of member.solids) {
      const one = data.gap?.members.includes(member.name);
      const body = mesh(solid, one ? bright(colour("--brass")) : colour(member.planned ? "--blue" : "--steel"), colour("--ink"));
      if (data.gap && !one) fade(body);
      body.traverse((part) => { part.userData.member = member; });
      targets.push(body.children[0]);
      group.add(body);
    }
  }
  for (const member of data.members) {
    (groups.get(member.on) ?? lathe).add(groups.get(member.name));
    move(member, data.gap ? member.start : member.position);
  }
  scene.add(new THREE.HemisphereLight(0xffffff, 0x888877, 2.2));
  const sun = new THREE.DirectionalLight(0xffffff, 1.6);
  sun.position.set(600, 900, 300);
  scene.add(sun);

  const box = new THREE.Box3().setFromObject(scene);
  const middle = box.getCenter(new THREE.Vector3());
  const label = document.createElement("p");
  const camera = new THREE.PerspectiveCamera(30, 1, 10, 20000);
  const view = { turn: -0.4, lift: 0.35, far: box.getSize(new THREE.Vector3()).length() * 1.25 };

  function move(member, position) {
    const group = groups.get(member.name);
    group.position.set(...member.at);
    if (member.swivel) group.setRotationFromAxisAngle(unit.Y, member.swivel * Math.PI / 180);
    if (member.motion === "slides") group.position.addScaledVector(unit[member.axis].clone().applyQuaternion(group.quaternion), position);
    if (member.motion === "turns") group.setRotationFromAxisAngle(unit[member.axis], position * Math.PI / 180);
  }

  function draw() {
    const width = place.clientWidth;
    const height = Math.max(260, Math.min(width * 0.5, 620));
    renderer.setPixelRatio(Math.min(devicePixelRatio, 2));
    renderer.setSize(width, height);
    camera.aspect = width / height;
    camera.updateProjectionMatrix();
    const flat = Math.cos(view.lift) * view.far / Math.min(1, camera.aspect / 1.6);
    camera.position.set(
      middle.x + flat * Math.cos(view.turn),
      middle.y + Math.sin(view.lift) * view.far,
      middle.z + flat * Math.sin(view.turn));
    camera.lookAt(middle);
    renderer.render(scene, camera);
    if (data.gap) {
      const at = lathe.localToWorld(between(data.gap)).project(camera);
      label.style.left = `${(at.x + 1) / 2 * width}px`;
      label.style.top = `${(1 - at.y) / 2 * height}px`;
    }
  }

  const pointers = new Map();
  let travelled = 0;
  const canvas = renderer.domElement;
  canvas.addEventListener("pointerdown", (e) => { canvas.setPointerCapture(e.pointerId); pointers.set(e.pointerId, e); travelled = 0; });
  canvas.addEventListener("pointermove", (e) => {
    const before = pointers.get(e.pointerId);
    if (!before) return;
    if (pointers.size === 2) {
      const other = [...pointers.values()].find((p) => p.pointerId !== e.pointerId);
      const gap = (p) => Math.hypot(p.clientX - other.clientX, p.clientY - other.clientY);
      near(gap(before) / Math.max(1, gap(e)));
    } else {
      view.turn += (e.clientX - before.clientX) * 0.006;
      view.lift = Math.max(-0.2, Math.min(1.5, view.lift + (e.clientY - before.clientY) * 0.006));
    }
    travelled += Math.abs(e.clientX - before.clientX) + Math.abs(e.clientY - before.clientY);
    pointers.set(e.pointerId, e);
    draw();
  });
  const near = (factor) => { view.far = Math.max(150, Math.min(6000, view.far * factor)); };
  canvas.addEventListener("pointerup", (e) => {
    pointers.delete(e.pointerId);
    if (travelled < 6) {
      const rect = canvas.getBoundingClientRect();
      const at = new THREE.Vector2((e.clientX - rect.left) / rect.width * 2 - 1, 1 - (e.clientY - rect.top) / rect.height * 2);
      const ray = new THREE.Raycaster();
      ray.setFromCamera(at, camera);
      const hit = ray.intersectObjects(targets)[0];
      if (hit) location.href = hit.object.userData.member.href;
    }
  });
  canvas.addEventListener("pointercancel", (e) => pointers.delete(e.pointerId));
  canvas.addEventListener("wheel", (e) => { e.preventDefault(); near(Math.exp(e.deltaY * 0.001)); draw(); }, { passive: false });
  document.querySelectorAll("input[data-member]").forEach((slider) => {
    const follow = () => { const m = seats.get(slider.dataset.member); if (m) { move(m, Number(slider.value)); draw(); } };
    slider.addEventListener("input", follow);
    follow();
  });
  new ResizeObserver(draw).observe(place);
  draw();
  if (data.gap) await approach();
  place.dataset.drawn = String(targets.length);

  // The members go from where they usually stand to where the gap is least; the view comes nearer.
  async function approach() {
    const still = matchMedia("(prefers-reduced-motion: reduce)").matches;
    const from = middle.clone();
    const to = lathe.localToWorld(between(data.gap));
    const far = view.far;
    const begun = performance.now();
    for (let share = still ? 1 : 0; ; share = Math.min(1, (performance.now() - begun) / 1400)) {
      const eased = share * share * (3 - 2 * share);
      for (const member of data.members) move(member, member.start + (member.position - member.start) * eased);
      middle.lerpVectors(from, to, eased);
      view.far = far * (1 - 0.62 * eased);
      draw();
      if (share === 1) break;
      await new Promise(requestAnimationFrame);
    }
    lathe.add(measured(data.gap, colour("--red")));
    label.className = "gap";
    label.textContent = data.gap.words;
    place.append(label);
    draw();
  }
}

const between = (gap) => new THREE.Vector3(...gap.from).lerp(new THREE.Vector3(...gap.to), 0.5);

const bright = (colour) => colour.multiplyScalar(0.6 / Math.max(colour.r, colour.g, colour.b));

// What the gap does not lie between is seen through, so that the gap is seen.
function fade(body) {
  body.traverse((part) => {
    if (part.material) Object.assign(part.material, { transparent: true, opacity: part.isMesh ? 0.3 : 0.5, depthWrite: !part.isMesh });
  });
}

// A gap as a bar between two balls, drawn over everything else.
function measured(gap, colour) {
  const drawn = new THREE.Group();
  const ink = new THREE.MeshBasicMaterial({ color: colour, depthTest: false });
  const from = new THREE.Vector3(...gap.from);
  const to = new THREE.Vector3(...gap.to);
  for (const end of [from, to]) {
    const ball = new THREE.Mesh(new THREE.SphereGeometry(3, 16, 12), ink);
    ball.position.copy(end);
    drawn.add(ball);
  }
  const length = from.distanceTo(to);
  if (length > 0) {
    const bar = new THREE.Mesh(new THREE.CylinderGeometry(1.2, 1.2, length, 12), ink);
    bar.position.copy(from).lerp(to, 0.5);
    bar.quaternion.setFromUnitVectors(unit.Y, to.clone().sub(from).normalize());
    drawn.add(bar);
  }
  drawn.traverse((part) => { part.renderOrder = 9; });
  return drawn;
}

function mesh(solid, colour, edge) {
  let shape;
  const body = new THREE.Group();
  if (solid.size) {
    shape = new THREE.BoxGeometry(...solid.size);
    body.position.set(...solid.corner.map((c, i) => c + solid.size[i] / 2));
  } else {
    shape = new THREE.CylinderGeometry(solid.diameter / 2, solid.diameter / 2, solid.length, 40);
    body.position.set(...solid.end);
    body.position.addScaledVector(unit[solid.axis], solid.length / 2);
    if (solid.axis === "X") body.rotation.z = Math.PI / 2;
    if (solid.axis === "Z") body.rotation.x = Math.PI / 2;
  }
  body.add(new THREE.Mesh(shape, new THREE.MeshLambertMaterial({ color: colour })));
  body.add(new THREE.LineSegments(new THREE.EdgesGeometry(shape, 30), new THREE.LineBasicMaterial({ color: edge })));
  return body;
}
