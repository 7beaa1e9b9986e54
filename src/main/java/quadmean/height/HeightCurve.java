package quadmean.height;

import java.util.List;
import java.util.Objects;
import quadmean.model.CurveForm;
import quadmean.stats.LeastSquaresFit;
import quadmean.stats.StudentT;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/**
 * A curve in use: dbh in centimetres to height in metres. Inside it works in the unit system of its parameters, with
 * the breast height that goes with them.
 *
 * @param species code of the species or group that it was fitted to, {@code *} for all species together
 * @param scope whose heights it was fitted to
 * @param tried the fit, with an optimum
 * @param ratio scales heights above breast height to a species that borrows the curve
 * @param units unit system of the parameters
 * @param breastHeight breast height in the length unit of that system
 * @param heights number of heights it was fitted to
 * @param minDbhCm smallest dbh among them (cm)
 * @param maxDbhCm largest dbh among them (cm)
 */
public record HeightCurve(
        String species,
        CurveScope scope,
        CurveFit tried,
        SpeciesRatio ratio,
        UnitSystem units,
        double breastHeight,
        int heights,
        double minDbhCm,
        double maxDbhCm) {

    /** The form. */
    public CurveForm form() {
        return tried.form();
    }

    /** The parameters, in the order of the formula. */
    public double[] parameters() {
        return fit().parameters();
    }

    private LeastSquaresFit fit() {
        return Objects.requireNonNull(tried.fit(), "a curve in use has an optimum");
    }

    /**
     * Height of a tree of this dbh.
     *
     * @param dbhCm dbh (cm), above 0
     * @return total height (m)
     */
    public double heightMetres(double dbhCm) {
        return heightMetres(form(), parameters(), ratio.value(), units, breastHeight, dbhCm);
    }

    /** The same of any parameters and ratio. */
    static double heightMetres(
            CurveForm form, double[] parameters, double ratio, UnitSystem units, double breastHeight, double dbhCm) {
        double d = Unit.CENTIMETRE.convert(dbhCm, units.diameter());
        double h = breastHeight + ratio * CurveModel.of(form).value(d, parameters);
        return units.length().convert(h, Unit.METRE);
    }

    /**
     * Height of a tree of this dbh with its error. The variance of the curve is that of a linearised function of the
     * parameters, gᵀVg, and of the ratio, taken as independent of them. Nonlinear fits of heights themselves need no
     * correction for bias.
     *
     * @param dbhCm dbh (cm), above 0
     */
    public HeightPrediction predict(double dbhCm) {
        double d = Unit.CENTIMETRE.convert(dbhCm, units.diameter());
        double above = CurveModel.of(form()).value(d, parameters());
        double curve = Math.hypot(ratio.value() * parameterSe(d), ratio.se() * above);
        double scatter =
                ratio.value() * fit().sigma() * Math.pow(d, tried.scatter().power());
        return new HeightPrediction(
                heightMetres(dbhCm),
                units.length().convert(curve, Unit.METRE),
                units.length().convert(scatter, Unit.METRE));
    }

    /**
     * The curve at a dbh with its confidence and prediction bands, by Student's t on n - p degrees of freedom; pointwise,
     * not for the whole curve at once.
     *
     * @param dbhCm dbh (cm), above 0
     * @param confidence confidence level, in (0, 1)
     */
    public HeightBand band(double dbhCm, double confidence) {
        HeightPrediction p = predict(dbhCm);
        double t = StudentT.critical(confidence, fit().n() - fit().parameters().length);
        return new HeightBand(p.metres(), t * p.curveSe(), t * p.standardError());
    }

    private double parameterSe(double d) {
        return Math.sqrt(SharedError.variance(CurveModel.of(form()).gradient(d, parameters()), fit().covariance()));
    }

    /**
     * How the height at a dbh moves with what other trees share: the parameters, and the ratio where there is one.
     *
     * @param dbhCm dbh (cm), above 0
     * @param user code of the species that uses the curve
     */
    List<SharedError> sharedErrors(double dbhCm, String user) {
        double d = Unit.CENTIMETRE.convert(dbhCm, units.diameter());
        double metres = units.length().convert(1, Unit.METRE);
        double[] g = CurveModel.of(form()).gradient(d, parameters());
        for (int i = 0; i < g.length; i++) {
            g[i] *= metres * ratio.value();
        }
        SharedError ofParameters = new SharedError(source(), g, fit().covariance());
        if (ratio.se() == 0) {
            return List.of(ofParameters);
        }
        double above = metres * CurveModel.of(form()).value(d, parameters());
        double[][] variance = {{ratio.se() * ratio.se()}};
        return List.of(ofParameters, new SharedError(ratioSource(user), new double[] {above}, variance));
    }

    private String source() {
        return "curve " + scope + " " + species;
    }

    private static String ratioSource(String user) {
        return "ratio " + user;
    }

    /**
     * What a tree that the curve was fitted to moves its parameters by: (GᵀWG)⁻¹·w·g·e/√(1-h), e its residual and h its leverage;
     * the sum of squares is then the variance of the parameters without bias where the scatter is as the fit has it (MacKinnon and
     * White 1985, HC2, from memory).
     */
    Influence influence(double dbhCm, double heightM) {
        double d = Unit.CENTIMETRE.convert(dbhCm, units.diameter());
        double[] g = CurveModel.of(form()).gradient(d, parameters());
        double weight = Math.pow(d, -2 * tried.scatter().power()) / (fit().sigma() * fit().sigma());
        double residual = Unit.METRE.convert(heightM, units.length())
                - breastHeight
                - CurveModel.of(form()).value(d, parameters());
        double leverage = Math.min(1 - 1e-9, weight * SharedError.variance(g, fit().covariance()));
        double[] shift = new double[g.length];
        for (int a = 0; a < g.length; a++) {
            for (int b = 0; b < g.length; b++) {
                shift[a] += fit().covariance()[a][b] * g[b] * weight * residual / Math.sqrt(1 - leverage);
            }
        }
        return new Influence(source(), shift);
    }

    /** What a tree of a species that borrows the curve moves its ratio by, a mean of n ratios; n/(n-1) makes the variance unbiased. */
    Influence ratioInfluence(String user, double dbhCm, double heightM) {
        double breast = units.length().convert(breastHeight, Unit.METRE);
        double own = (heightM - breast) / (scaled(SpeciesRatio.NONE).heightMetres(dbhCm) - breast);
        double n = ratio.heights();
        return new Influence(ratioSource(user), new double[] {(own - ratio.value()) / Math.sqrt(n * (n - 1))});
    }

    /** Whether a dbh lies outside the range of the heights that the curve was fitted to. */
    public boolean isExtrapolated(double dbhCm) {
        return dbhCm < minDbhCm || dbhCm > maxDbhCm;
    }

    HeightCurve scaled(SpeciesRatio to) {
        return new HeightCurve(species, scope, tried, to, units, breastHeight, heights, minDbhCm, maxDbhCm);
    }
}
