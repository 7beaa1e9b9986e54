package quadmean.report;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import quadmean.cruise.EstateResult;
import quadmean.estimate.EstateEstimator;
import quadmean.stats.MeanEstimate;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;

/**
 * What each species has in each stand of an estate, in the units of the design: per unit area with its standard error, and in total.
 * There may be hundreds of thousands of rows: they are never there together.
 */
final class StandSpeciesCsv implements Content {
    private final EstateResult result;
    private final UnitSystem units;
    private final List<Attribute> attributes;

    private StandSpeciesCsv(EstateResult result) {
        this.result = result;
        this.units = result.design().units();
        this.attributes = result.design().attributes();
    }

    static Content of(EstateResult result) {
        return new StandSpeciesCsv(result);
    }

    @Override
    public void writeTo(OutputStream out) throws IOException {
        EstateEstimator stands = result.stands();
        Csv.writeTo(
                out,
                header(),
                stands.size(),
                i -> stands.speciesOf(i).stream()
                        .map(species -> row(i, species))
                        .toList());
    }

    private List<String> header() {
        List<String> cells = new ArrayList<>(List.of("stand", "species"));
        for (Attribute attribute : attributes) {
            String perArea = attribute.id() + "_" + unit(attribute, Basis.PER_AREA);
            cells.addAll(List.of(perArea, perArea + "_se", attribute.id() + "_total_" + unit(attribute, Basis.TOTAL)));
        }
        return cells;
    }

    private String unit(Attribute attribute, Basis basis) {
        return attribute.unit(basis, units).symbol().replace("/", "_per_");
    }

    private List<String> row(int stand, String species) {
        List<String> cells = new ArrayList<>(2 + 3 * attributes.size());
        cells.add(Csv.guarded(result.stands().stand(stand).code()));
        cells.add(Csv.guarded(species));
        double areaHa = result.stands().stand(stand).areaHa();
        for (Attribute attribute : attributes) {
            MeanEstimate mean = result.stands().perHectare(stand, species, attribute);
            cells.add(number(attribute, Basis.PER_AREA, mean.mean()));
            cells.add(mean.hasError() ? number(attribute, Basis.PER_AREA, mean.se()) : "");
            cells.add(number(attribute, Basis.TOTAL, mean.mean() * areaHa));
        }
        return cells;
    }

    private String number(Attribute attribute, Basis basis, double metric) {
        Unit from = attribute.unit(basis, UnitSystem.METRIC);
        return Csv.number(from.convert(metric, attribute.unit(basis, units)));
    }
}
