package quadmean.volume;

import quadmean.model.BarkSpec;
import quadmean.units.Unit;

/** Takes bark off a diameter. */
final class Bark {
    private Bark() {}

    /**
     * Diameter inside bark: dib = a·dob^b in the unit of the coefficients (form of Larsen and Hann 1985, from memory).
     *
     * @param bark the coefficients
     * @param outsideCm diameter outside bark (cm), 0 or more
     * @return cm
     */
    static double inside(BarkSpec bark, double outsideCm) {
        double outside = Unit.CENTIMETRE.convert(outsideCm, bark.unit());
        return bark.unit().convert(bark.a() * Math.pow(outside, bark.b()), Unit.CENTIMETRE);
    }
}
