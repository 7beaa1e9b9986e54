package quadmean.field;

import quadmean.design.Design;
import quadmean.design.InstrumentSettings;
import quadmean.measure.IndexError;
import quadmean.units.AngleScale;

/** What a calibration of the instruments does to readings; the design says so, and the report repeats it. */
final class Corrections {
    private final InstrumentSettings settings;

    Corrections(Design design) {
        this.settings = design.followUp().instrument();
    }

    /** A clinometer reading without the index error, which the design states in units of the same scale. */
    double reading(AngleScale scale, double reading) {
        return settings.indexError().isPresent()
                ? IndexError.of(scale, settings.indexError().getAsDouble()).corrected(scale, reading)
                : reading;
    }

    /** A distance from eye to stem, in any unit. */
    double distance(double distance) {
        return distance * settings.distanceFactor();
    }
}
