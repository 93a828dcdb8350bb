// The picture in three dimensions is loaded only when somebody wants it; no server is needed.
(function () {
  "use strict";
  var three = document.getElementById("three");
  var place = document.getElementById("solid");
  three.hidden = false;
  function load(name) {
    return new Promise(function (done, failed) {
      var script = document.createElement("script");
      script.src = name;
      script.onload = done;
      script.onerror = failed;
      document.head.append(script);
    });
  }
  three.addEventListener("toggle", function () {
    if (!three.open || three.dataset.loaded) return;
    three.dataset.loaded = "yes";
    load("three.js")
      .then(function () { return load("scene.js"); })
      .then(function () { return load("solid.js"); })
      .then(function () { fettleShow(place, fettleScene); })
      .catch(function () {
        place.textContent = "This browser cannot draw in three dimensions; the side elevation shows the same lathe.";
      });
  });
})();
