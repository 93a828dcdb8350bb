package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Axis;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Member;
import fettle.machine.lathe.Solid;
import fettle.machine.text.Quantity;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import fettle.mechanics.bearings.PlainBush;
import fettle.mechanics.shafts.ShaftMaterial;
import fettle.mechanics.shafts.Spindle;
import fettle.mechanics.shafts.SpindleModel;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The spindle in its bearings as a shaft on springs. It begins at the rear bearing; what stands out
 * behind it is left out.
 *
 * @param machine the lathe
 * @param block what the book says of the spindle
 * @param front bearing at the chuck
 * @param rear bearing at the far end
 */
record Headstock(Machine machine, Values block, Support front, Support rear) {

  private static final double FILM_DOUBT = 0.8;
  private static final double SIZE_DOUBT = 0.08;
  private static final double TYPICAL_SPEED = 500 * Math.PI / 30;

  /**
   * One bearing of the spindle.
   *
   * @param block what the book says of it
   * @param rolling what it is if it rolls
   * @param give across the axis [term in mm/N]
   * @param tilt stiffness against tilting [N mm/rad]
   * @param film the working of a bush's oil film
   */
  record Support(
      Values block, Optional<RollingSet> rolling, Term give, double tilt, Optional<Working> film) {

    double bore() {
      return rolling.map(r -> r.outside().bore()).orElseGet(() -> block.need("bore").value());
    }
  }

  /** Returns the spindle, if the book tells enough of it. */
  static Optional<Headstock> of(Machine machine) {
    Optional<Values> block = machine.values().block("spindle");
    if (block.isEmpty()
        || !block.get().has("span")
        || !block.get().has("overhang")
        || !block.get().has("front")
        || !block.get().has("rear")) {
      return Optional.empty();
    }
    Optional<SpindleDrive> drive = SpindleDrive.of(machine);
    double speed = drive.map(SpindleDrive::usual).orElse(TYPICAL_SPEED);
    Optional<Support> front = support(block.get().block("front").orElseThrow(), "g_f", speed);
    Optional<Support> rear = support(block.get().block("rear").orElseThrow(), "g_r", speed);
    return front.isEmpty() || rear.isEmpty()
        ? Optional.empty()
        : Optional.of(new Headstock(machine, block.get(), front.get(), rear.get()));
  }

  /** Returns what the book does not tell, or tells of a kind that is not reckoned. */
  static List<String> lacking(Values block) {
    List<String> lacking = new ArrayList<>();
    for (String key : List.of("span", "overhang")) {
      if (!block.has(key)) {
        lacking.add("its " + key);
      }
    }
    for (String place : List.of("front", "rear")) {
      Optional<Values> bearing = block.block(place);
      if (bearing.isEmpty()) {
        lacking.add("its " + place + " bearing");
      } else if (support(bearing.get(), "g", TYPICAL_SPEED).isEmpty()) {
        lacking.add(reckonable(place, bearing.get()));
      }
    }
    return lacking;
  }

  private static String reckonable(String place, Values bearing) {
    return bearing.shape().equals("bearing/bush")
        ? "the clearance of its " + place + " bush"
        : "a "
            + place
            + " bearing that is a deep groove or angular contact ball bearing of a"
            + " tabulated size, which "
            + bearing.text("type").orElse("this one")
            + " is not";
  }

  private static Optional<Support> support(Values bearing, String symbol, double speed) {
    if (bearing.shape().equals("bearing/bush")) {
      return bush(bearing, symbol, speed);
    }
    return RollingSet.of(bearing)
        .map(
            set -> {
              RollingSet.Springs k = set.springs();
              Term give = new Term(symbol, 1 / k.radial(), Unit.NM_PER_N, k.doubt() / k.radial());
              return new Support(bearing, Optional.of(set), give, k.tilt(), Optional.empty());
            });
  }

  /** The film of a shaft that runs nearly central, by the short bearing. */
  private static Optional<Support> bush(Values v, String symbol, double speed) {
    Optional<Quantity> clearance = v.quantity("clearance").filter(c -> c.value() > 0);
    if (clearance.isEmpty()) {
      return Optional.empty();
    }
    double central = 1e-7;
    PlainBush bush =
        new PlainBush(v.need("bore").value(), v.need("length").value(), clearance.get().value());
    double load = bush.filmLoad(v.need("oil").value(), speed, central);
    Working film =
        Working.check(
            symbol,
            central * clearance.get().value() / 2 / load,
            Unit.NM_PER_N,
            "4*(c/2)^3/(pi*eta*n*d/2*L^3)",
            clearance.get().term("c"),
            v.need("oil").term("eta"),
            Term.exact("n", speed, Unit.RPM),
            v.need("bore").term("d"),
            v.need("length").term("L"));
    double doubt = Math.min(film.doubt(), FILM_DOUBT * film.value());
    return Optional.of(
        new Support(
            v,
            Optional.empty(),
            new Term(symbol, film.value(), Unit.NM_PER_N, doubt),
            0,
            Optional.of(film)));
  }

  double span() {
    return block.need("span").value();
  }

  double overhang() {
    return block.need("overhang").value();
  }

  double bore() {
    return block.need("bore").value();
  }

  double body() {
    return block
        .quantity("body diameter")
        .map(Quantity::value)
        .orElse(Math.max((front.bore() + rear.bore()) / 2, 1.05 * bore()));
  }

  double nose() {
    return block
        .quantity("nose diameter")
        .map(Quantity::value)
        .orElse(Math.max(front.bore(), 1.05 * bore()));
  }

  /** Returns the share of doubt of bending and shear: four times that of the diameters. */
  private double bendingDoubt() {
    double share = 0;
    for (String key : List.of("body diameter", "nose diameter")) {
      share =
          Math.max(share, block.quantity(key).map(q -> q.doubt() / q.value()).orElse(SIZE_DOUBT));
    }
    return Math.min(0.8, 4 * share);
  }

  boolean sizesStated() {
    return block.has("body diameter") && block.has("nose diameter");
  }

  Member member() {
    return machine.member(block.needText("member"));
  }

  /** Returns what stands on the spindle and turns with it. */
  List<Member> turning() {
    Set<String> on = new LinkedHashSet<>(Set.of(member().name()));
    boolean more = true;
    while (more) {
      more = false;
      for (Member m : machine.members().values()) {
        more |= m.seat().on().filter(on::contains).isPresent() && on.add(m.name());
      }
    }
    return on.stream().map(machine::member).toList();
  }

  /** Returns what is fixed on the nose: the chuck, if the book has one. */
  List<Member> chucks() {
    return turning().stream().filter(m -> !m.name().equals(member().name())).toList();
  }

  /**
   * Returns how far the chuck stands out from the face it sits against.
   *
   * @return length [mm]
   */
  double chuckLength() {
    double length = 0;
    for (Member chuck : chucks()) {
      for (Solid solid : chuck.envelope().values()) {
        if (solid instanceof Solid.Cylinder c && c.axis() == Axis.Z) {
          length = Math.max(length, c.end().z() + c.length());
        }
      }
    }
    return length;
  }

  /**
   * Returns the largest diameter that turns with the spindle.
   *
   * @return diameter, 0 if nothing is known [mm]
   */
  double largest() {
    return turning().stream()
        .flatMap(m -> m.envelope().values().stream())
        .filter(s -> s instanceof Solid.Cylinder c && c.axis() == Axis.Z)
        .mapToDouble(s -> ((Solid.Cylinder) s).diameter())
        .max()
        .orElse(0);
  }

  /** Returns the shaft on its springs, with the chuck on its nose. */
  Spindle shaft() {
    List<Spindle.RigidMass> masses = new ArrayList<>();
    double end = span() + overhang();
    for (Member chuck : chucks()) {
      Optional<Quantity> mass = chuck.values().quantity("mass");
      for (Solid solid : chuck.envelope().values()) {
        if (mass.isPresent() && solid instanceof Solid.Cylinder c && masses.isEmpty()) {
          double m = mass.get().value();
          double r = c.diameter() / 2;
          masses.add(
              new Spindle.RigidMass(
                  end,
                  m,
                  m * (3 * r * r + c.length() * c.length()) / 12,
                  m * r * r / 2,
                  c.end().z() + c.length() / 2));
        }
      }
    }
    return new Spindle(
        List.of(
            new Spindle.Step(span(), body(), bore()), new Spindle.Step(overhang(), nose(), bore())),
        ShaftMaterial.STEEL,
        List.of(
            new Spindle.Support("rear", 0, 1 / rear.give().value(), rear.tilt()),
            new Spindle.Support("front", span(), 1 / front.give().value(), front.tilt())),
        masses);
  }

  /**
   * Returns the give under a force across the axis by its causes: bending, shear, front, rear.
   *
   * @param beyond distance of the force from the face of the nose, 0 or more [mm]
   */
  List<Term> gives(double beyond) {
    SpindleModel.Deflected d = SpindleModel.under(shaft(), span() + overhang() + beyond, 1);
    double give = d.deflection();
    double doubt = bendingDoubt();
    return List.of(
        part("g_b", give * d.bending(), doubt),
        part("g_q", give * d.shear(), doubt),
        part("g_f", give * d.bearings().get(1), front.give().doubt() / front.give().value()),
        part("g_r", give * d.bearings().get(0), rear.give().doubt() / rear.give().value()));
  }

  private static Term part(String symbol, double give, double doubt) {
    return new Term(symbol, give, Unit.NM_PER_N, doubt * give);
  }
}
