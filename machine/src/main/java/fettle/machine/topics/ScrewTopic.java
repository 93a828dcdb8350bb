package fettle.machine.topics;

import fettle.machine.dictionary.Values;
import fettle.machine.lathe.Element;
import fettle.machine.lathe.Machine;
import fettle.machine.lathe.Train;
import fettle.machine.text.Quantity;
import fettle.mechanics.base.Numbers;
import fettle.mechanics.base.Source;
import fettle.mechanics.base.Term;
import fettle.mechanics.base.Unit;
import fettle.mechanics.base.Working;
import fettle.mechanics.loop.JointFinish;
import fettle.mechanics.materials.Material;
import fettle.mechanics.materials.Materials;
import fettle.mechanics.materials.Property;
import fettle.mechanics.screws.AxialStiffness;
import fettle.mechanics.screws.EndFixity;
import fettle.mechanics.screws.Nut;
import fettle.mechanics.screws.Pair;
import fettle.mechanics.screws.SlenderScrew;
import fettle.mechanics.threads.ThreadProfile;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a screw takes and gives: torque, locking, nut pressure, stiffness, buckling, wear. */
final class ScrewTopic implements Topic {

  private static final Source MOMENTS =
      Source.page(
          "Mott, Machine Elements in Mechanical Design, 4th ed.",
          "eq. 17-10 and 17-11, power screws");
  private static final Source PRESSURE =
      Source.memory("Shigley's Mechanical Engineering Design", "Table 8-4, after Ham and Ryan");
  private static final Source KEEP =
      Source.practice("nut pressure of a slide that must keep its setting");
  private static final Source SPRINGS =
      Source.memory("VDI 2230:2003", "thread in series with the bar of the screw and its bearing");
  private static final Source COLUMN =
      Source.memory("Shigley's Mechanical Engineering Design", "Euler and J. B. Johnson columns");
  private static final Source WHIRL =
      Source.derived("first bending frequency of a slender round bar on its supports");
  private static final Source WEAR =
      Source.memory("Archard 1953, wear law", "coefficient by order");
  private static final double SAFE_COLUMN = 3;
  private static final double THREAD_DOUBT = 0.3;
  private static final double FACE_DOUBT = 0.5;
  private static final double FLANK_DOUBT = 0.1;
  private static final double LENGTH_DOUBT = 0.05;

  @Override
  public String name() {
    return "screws";
  }

  @Override
  public Study study(Machine machine, Optional<Values> shop) {
    Optional<Values> limits = machine.values().block("limits");
    Study all = new Study(List.of(), List.of());
    for (Train train : machine.trains().values()) {
      Element last = train.elements().get(train.elements().size() - 1);
      if (limits.isPresent() && last instanceof Element.Screw screw) {
        all =
            all.and(
                Study.orReason(
                    name(), train.name(), () -> new OneScrew(train, screw, limits.get()).study()));
      }
    }
    return all;
  }

  /** The questions asked of one screw. */
  private final class OneScrew {
    private final Train train;
    private final Values values;
    private final Values limits;
    private final FeedScrew feed;
    private final ThreadProfile profile;
    private final Term force;
    private final Optional<Material> steel;
    private final List<Figure> figures = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    OneScrew(Train train, Element.Screw screw, Values limits) {
      this.train = train;
      this.limits = limits;
      values = screw.values();
      feed = FeedScrew.of(screw);
      profile = screw.thread().profile();
      force = limits.need("feed force").term("F");
      steel = values.text("material").map(Materials::of);
    }

    Study study() {
      torque();
      nut().ifPresent(this::nut);
      if (values.has("length") && steel.isPresent()) {
        stiffness(steel.get());
        column(steel.get());
      }
      feed.pair().filter(RollingSet::isPair).ifPresent(this::thrust);
      return new Study(figures, findings);
    }

    private void torque() {
      Working up = feed.up(force);
      Working down = feed.down(force);
      String bearing =
          values.has("bearing") ? "with its thrust bearing" : "thread alone, no bearing stated";
      add("torque against the feed force", up, Better.LOWER, MOMENTS, bearing);
      add("torque with the feed force", down, Better.NEITHER, MOMENTS, bearing);
      Working efficiency =
          Working.of("eta", Unit.PERCENT, "F*Ph/(2*pi*T_up)", force, lead(), Term.of(up));
      add("efficiency", efficiency, Better.HIGHER, MOMENTS, "");
      List<Term> thread = new ArrayList<>(feed.thread());
      Working margin =
          Working.check(
              "m",
              values.need("friction").value() / feed.screw().lockingFriction(),
              Unit.ONE,
              "mu/(cos(alpha_n)*tan(lambda))",
              thread.get(1),
              thread.get(2),
              thread.get(3));
      add("friction over what locks it", margin, Better.NEITHER, MOMENTS, locks(margin));
      if (train.use().equals("feed") && down.value() - down.doubt() < 0) {
        driven(down.value() < 0);
      }
    }

    private static String locks(Working margin) {
      return margin.value() > 1 ? "the thread locks itself" : "the thread does not lock itself";
    }

    private void driven(boolean sure) {
      find(
          sure ? Finding.Rank.CAUTION : Finding.Rank.NOTE,
          "torque with the feed force",
          "The slide of the "
              + train.name()
              + (sure ? " drives" : ", well oiled, may drive")
              + " its screw: it creeps under load and when it shakes. A smaller lead or a brake on"
              + " the handle holds it.",
          "a torque above 0",
          MOMENTS);
    }

    private Term lead() {
      return Term.exact("Ph", feed.screw().lead(), Unit.MM);
    }

    private Optional<Nut> nut() {
      return values
          .quantity("nut length")
          .map(l -> new Nut(profile.d2(), profile.p(), profile.engagement(), l.value()));
    }

    private void nut(Nut nut) {
      Working pressure =
          Working.check(
              "p",
              nut.pressure(force.value()),
              Unit.MPA,
              "F*P/(pi*d2*H1*Ln)",
              force,
              Term.exact("P", nut.p(), Unit.MM),
              Term.exact("d2", nut.d2(), Unit.MM),
              new Term("H1", nut.engagement(), Unit.MM, FLANK_DOUBT * nut.engagement()),
              values.need("nut length").term("Ln"));
      Optional<Pair> pair = values.text("nut material").flatMap(OneScrew::pair);
      add("pressure in the nut", pressure, Better.LOWER, PRESSURE, "");
      pair.ifPresent(p -> limits(p, pressure));
      pair.ifPresent(p -> wear(p, pressure));
    }

    private static Optional<Pair> pair(String material) {
      Material nut = Materials.of(material);
      return switch (nut.family()) {
        case BRONZE -> Optional.of(Pair.STEEL_BRONZE);
        case BRASS -> Optional.of(Pair.STEEL_BRASS);
        case GREY_IRON, DUCTILE_IRON -> Optional.of(Pair.STEEL_CAST_IRON);
        case STEEL -> Optional.of(Pair.STEEL_STEEL);
        case PLASTIC ->
            nut.designation().startsWith("POM") ? Optional.of(Pair.STEEL_POM) : Optional.empty();
        default -> Optional.empty();
      };
    }

    private void limits(Pair pair, Working pressure) {
      double most = pair.pressure(1).low();
      Working share =
          Working.of(
              "s", Unit.PERCENT, "p/p_lim", Term.of(pressure), Term.exact("p_lim", most, Unit.MPA));
      add("share of the pressure at which the nut seizes", share, Better.LOWER, PRESSURE, "");
      if (pressure.value() > most) {
        find(
            Finding.Rank.CAUTION,
            "pressure in the nut",
            "The nut of the " + train.name() + " may seize; a longer nut helps.",
            "at most " + Numbers.significant(most, 3) + " MPa, " + pair.words(),
            PRESSURE);
      } else if (pressure.value() > pair.keepingPressure()) {
        find(
            Finding.Rank.NOTE,
            "pressure in the nut",
            "The nut of the "
                + train.name()
                + " wears soon if it often carries the whole feed force; a longer nut helps.",
            "at most "
                + Numbers.significant(pair.keepingPressure(), 3)
                + " MPa to keep its setting",
            KEEP);
      }
    }

    private void wear(Pair pair, Working pressure) {
      double worst = pair.wear().high();
      Working travel =
          Working.check(
              "s",
              Nut.life(
                  limits.need("play").value(),
                  worst,
                  pressure.value(),
                  feed.screw().slidingRatio()),
              Unit.KM,
              "h*Ph*cos(lambda)/(k*p*pi*d2)",
              limits.need("play").term("h"),
              lead(),
              Term.exact("lambda", feed.screw().leadAngle(), Unit.RAD),
              Term.exact("k", worst, Unit.M2_PER_N),
              Term.of(pressure),
              Term.exact("d2", profile.d2(), Unit.MM));
      add(
          "travel that wears in the play limit, at the worst",
          travel,
          Better.HIGHER,
          WEAR,
          "up to ten times that if clean and oiled");
    }

    private void stiffness(Material steel) {
      Quantity length = values.need("length");
      double mean = (profile.d2() + profile.d3()) / 2;
      double area = Math.PI / 4 * mean * mean;
      double e = steel.elasticity();
      double half = length.value() / 2;
      double screw = 1 / AxialStiffness.heldAtOneEnd(e, area, half);
      Term modulus = new Term("E", e, Unit.MPA, steel.quantity(Property.E).doubt());
      Working bar =
          Working.check(
              "g_s",
              screw,
              Unit.NM_PER_N,
              "4*L/2/(E*pi*((d2 + d3)/2)^2)",
              new Term("L", length.value(), Unit.MM, LENGTH_DOUBT * length.value()),
              modulus,
              Term.exact("d2", profile.d2(), Unit.MM),
              Term.exact("d3", profile.d3(), Unit.MM));
      double en =
          values.text("nut material").map(Materials::of).map(Material::elasticity).orElse(e);
      double thread = 1 / AxialStiffness.thread(profile.d(), profile.d3(), e, en);
      List<Term> terms =
          new ArrayList<>(
              List.of(Term.of(bar), new Term("g_t", thread, Unit.NM_PER_N, THREAD_DOUBT * thread)));
      String sum = "g_s + g_t";
      Optional<Term> bearing = bearingGive();
      if (bearing.isPresent()) {
        terms.add(bearing.get());
        sum += " + g_b";
      }
      String words =
          "nut half way"
              + (bearing.isPresent() ? "" : ", without its bearing")
              + feed.pair()
                  .map(RollingSet::words)
                  .filter(w -> !w.isEmpty())
                  .map(w -> ", " + w)
                  .orElse("");
      Working k = Working.of("k", Unit.N_PER_MICRON, "1/(" + sum + ")", terms);
      add("stiffness along the axis", k, Better.HIGHER, SPRINGS, words);
      terms.add(force);
      Working give = Working.of("x", Unit.MICRON, "F*(" + sum + ")", terms);
      add("give under the feed force", give, Better.LOWER, SPRINGS, "beside its play");
    }

    private Optional<Term> bearingGive() {
      Optional<Values> face =
          values.block("bearing").filter(b -> b.shape().equals("bearing/plain thrust"));
      if (face.isEmpty()) {
        return feed.pair().filter(RollingSet::isPair).map(RollingSet::axialGive);
      }
      double outer = face.get().need("outer diameter").value();
      double inner = face.get().need("inner diameter").value();
      if (!(outer > inner)) {
        throw new IllegalArgumentException(
            "the outer diameter of its thrust face is not larger than the inner one");
      }
      double area = Math.PI / 4 * (outer * outer - inner * inner);
      double give =
          1 / (area * JointFinish.PLANED.normalStiffness(Math.max(1e-3, force.value() / area)));
      return Optional.of(new Term("g_b", give, Unit.NM_PER_N, FACE_DOUBT * give));
    }

    private void column(Material steel) {
      if (!steel.knows(Property.RE)) {
        return;
      }
      EndFixity ends =
          EndFixity.valueOf(values.needText("ends").toUpperCase(Locale.ROOT).replace('-', '_'));
      double length = values.need("length").value();
      SlenderScrew slender = new SlenderScrew(profile.d3(), length);
      double k = ends.lengthFactor();
      double e = steel.elasticity();
      double yield = steel.yieldStrength();
      boolean euler = slender.law(k, e, yield) == SlenderScrew.Law.EULER;
      Term core = Term.exact("d3", profile.d3(), Unit.MM);
      String formula =
          euler ? "pi^3*E*d3^4/(64*(K*L)^2*F)" : "pi/4*d3^2*(Re - (Re*4*K*L/d3/(2*pi))^2/E)/F";
      Working safety =
          Working.check(
              "S",
              slender.bucklingForce(k, e, yield) / force.value(),
              Unit.ONE,
              formula,
              force,
              core,
              Term.exact("K", k),
              new Term("L", length, Unit.MM, LENGTH_DOUBT * length),
              new Term("E", e, Unit.MPA, steel.quantity(Property.E).doubt()),
              Term.exact("Re", yield, Unit.MPA));
      add("safety against buckling", safety, Better.HIGHER, COLUMN, "ends " + words(ends));
      if (safety.value() < SAFE_COLUMN) {
        find(
            Finding.Rank.CAUTION,
            "safety against buckling",
            "The screw of the " + train.name() + " is too slender to be pushed this hard.",
            "at least " + Numbers.significant(SAFE_COLUMN, 2),
            COLUMN);
      }
      if (!train.use().equals("feed")) {
        whirl(steel, slender, ends);
      }
    }

    private static String words(EndFixity ends) {
      return ends.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private void whirl(Material steel, SlenderScrew slender, EndFixity ends) {
      Working speed =
          Working.check(
              "n_c",
              slender.criticalSpeed(ends.waveNumber(), steel.elasticity(), steel.density()),
              Unit.RPM,
              "(kappa/L)^2*d3/4*sqrt(E/rho)",
              Term.exact("kappa", ends.waveNumber()),
              Term.exact("L", slender.length(), Unit.MM),
              Term.exact("d3", slender.core(), Unit.MM),
              new Term("E", steel.elasticity(), Unit.MPA, steel.quantity(Property.E).doubt()),
              Term.exact("rho", steel.density(), Unit.KG_PER_M3));
      add("speed at which the screw whirls", speed, Better.HIGHER, WHIRL, "ends " + words(ends));
    }

    private void thrust(RollingSet pair) {
      double one = pair.pair().stiffness() / 2;
      Term give = pair.axialGive();
      Working stiffness =
          Working.of(
              "k_b",
              Unit.N_PER_MICRON,
              "2*k_1",
              new Term("k_1", one, Unit.N_PER_MICRON, one * give.doubt() / give.value()));
      add(
          "stiffness of the thrust bearings",
          stiffness,
          Better.HIGHER,
          RollingSet.MODEL,
          pair.words());
      Term preload = pair.preload();
      Working lift =
          Working.of(
              "F_l",
              Unit.N,
              "r*F0",
              Term.exact("r", pair.pair().liftOff() / preload.value()),
              preload);
      add("feed force that unloads the preload", lift, Better.HIGHER, RollingSet.MODEL, "");
      if (lift.value() < force.value()) {
        find(
            Finding.Rank.NOTE,
            "feed force that unloads the preload",
            "At the full feed force one thrust bearing of the "
                + train.name()
                + " runs empty; more preload keeps the screw stiff.",
            "at least the feed force",
            RollingSet.MODEL);
      }
      Working life =
          Working.of(
              "s",
              Unit.KM,
              "Ph*1e6*(2^0.7*C/(Y*(F + F0)))^3",
              lead(),
              pair.rating(),
              Term.exact("Y", pair.factors().aboveY()),
              force,
              preload);
      add(
          "travel the thrust bearings last",
          life,
          Better.HIGHER,
          RollingSet.LIFE,
          "nine in ten, at the full feed force");
    }

    private void add(String name, Working working, Better better, Source source, String words) {
      figures.add(Figure.of(name(), train.name(), name, working, better, source).exactly(words));
    }

    private void find(
        Finding.Rank rank, String figure, String sentence, String limit, Source source) {
      findings.add(
          new Finding(rank, name() + "/" + train.name() + "/" + figure, sentence, limit, source));
    }
  }
}
