package fettle.machine.trials;

import fettle.machine.topics.Figure;
import fettle.mechanics.base.Working;
import fettle.mechanics.metrology.Forecast;

/**
 * A measured figure beside the forecast's.
 *
 * @param figure id of the forecast's figure
 * @param predicted its value [coherent]
 * @param doubt its doubt at about 95 % [coherent]
 * @param normalised normalised error En, explained up to 1 in amount [-]
 * @param words what that means
 */
public record Met(String figure, double predicted, double doubt, double normalised, String words) {

  static Met of(Measured measured, Figure figure, Working working) {
    double en =
        Forecast.normalisedError(
            measured.value(), measured.expanded(), working.value(), working.doubt(), 0);
    String words =
        Math.abs(en) > 1
            ? "not explained by the uncertainties"
            : working.doubt() > 0 && measured.expanded() > working.doubt() / 2
                ? "not contradicted, but the measurement is too coarse to confirm it"
                : "explained";
    return new Met(figure.id(), working.value(), working.doubt(), en, words);
  }
}
