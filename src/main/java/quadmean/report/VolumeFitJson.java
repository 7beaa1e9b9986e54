package quadmean.report;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import quadmean.model.FelledData;
import quadmean.model.Problem;
import quadmean.model.ValidRange;
import quadmean.stats.LinearFit;
import quadmean.units.Unit;
import quadmean.units.UnitSystem;
import quadmean.volume.VolumeBias;
import quadmean.volume.VolumeFit;
import quadmean.volume.VolumeFitGroup;
import quadmean.volume.VolumeFits;

/** Every number of a fit of volume equations, unrounded. */
final class VolumeFitJson {
    private static final int SCHEMA_VERSION = 1;

    private final UnitSystem units;

    private VolumeFitJson(UnitSystem units) {
        this.units = units;
    }

    static Content of(VolumeFits fits) {
        return JsonFile.of(new VolumeFitJson(fits.settings().units()).root(fits));
    }

    private ObjectNode root(VolumeFits fits) {
        FelledData data = fits.data();
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("schemaVersion", SCHEMA_VERSION);
        root.put("file", data.file());
        data.columns().forEach(root.putArray("columns")::add);
        root.put("volumes", data.volumes().isEmpty() ? "as the table gives them" : data.volumes());
        root.put("units", units.id());
        root.put("dbhUnit", units.diameter().symbol());
        root.put("heightUnit", units.length().symbol());
        root.put("volumeUnit", units.volume().symbol());
        ObjectNode rows = root.putObject("rows");
        rows.put("in", data.rows().in());
        rows.put("used", data.rows().used());
        rows.put("dropped", data.rows().dropped());
        rows.put("kept", data.rows().kept());
        var groups = root.putArray("groups");
        fits.groups().forEach(g -> groups.add(group(g)));
        var problems = root.putArray("problems");
        data.problems().forEach(p -> problems.add(problem(p)));
        return root;
    }

    private ObjectNode group(VolumeFitGroup group) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("code", group.code());
        node.put("trees", group.trees().size());
        ValidRange range = group.range();
        node.put("minDbh", Unit.CENTIMETRE.convert(range.minDbhCm(), units.diameter()));
        node.put("maxDbh", Unit.CENTIMETRE.convert(range.maxDbhCm(), units.diameter()));
        node.put("minHeight", Unit.METRE.convert(range.minHeightM(), units.length()));
        node.put("maxHeight", Unit.METRE.convert(range.maxHeightM(), units.length()));
        group.best().ifPresentOrElse(b -> node.put("best", b.form().id()), () -> node.putNull("best"));
        VolumeFitWords.warnings(group).forEach(node.putArray("warnings")::add);
        var forms = node.putArray("forms");
        group.fits().forEach(f -> forms.add(form(f)));
        return node;
    }

    private ObjectNode form(VolumeFit fit) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("form", fit.form().id());
        node.put("formula", fit.form().formula());
        node.put("regression", fit.form().regression());
        node.put("weights", fit.weights().id());
        node.put("status", fit.status().label());
        JsonNumbers.putText(node, "remark", fit.remark());
        LinearFit regression = fit.fit();
        if (regression != null) {
            ObjectNode coefficients = node.putObject("coefficients");
            for (int k = 0; k < regression.coefficients().length; k++) {
                ObjectNode c = coefficients.putObject(fit.form().coefficients().get(k));
                JsonNumbers.put(c, "estimate", regression.coefficients()[k]);
                JsonNumbers.put(c, "standardError", regression.standardError(k));
                JsonNumbers.put(c, "t", regression.t(k));
            }
            node.put("df", regression.df());
            JsonNumbers.put(node, "conditionNumber", regression.conditionNumber());
        }
        JsonNumbers.put(node, "residualSd", fit.sigma());
        node.put("residualSdScale", VolumeFitWords.scale(fit));
        JsonNumbers.put(node, "rSquared", fit.rSquared());
        JsonNumbers.put(node, "leaveOneOut", Unit.CUBIC_METRE.convert(fit.leaveOneOutM3(), units.volume()));
        JsonNumbers.put(node, "leaveOneOutPercent", fit.leaveOneOutPercent());
        JsonNumbers.put(node, "biasPercent", fit.biasPercent());
        var classes = node.putArray("biasByDbhClass");
        for (VolumeBias b : fit.biasByClass()) {
            ObjectNode c = classes.addObject();
            c.put("lower", b.lower());
            c.put("upper", b.upper());
            c.put("trees", b.trees());
            JsonNumbers.put(c, "biasPercent", b.percent());
        }
        node.put("cookLimit", fit.cookLimit());
        node.put("leverageLimit", fit.leverageLimit());
        var influential = node.putArray("influential");
        fit.influential().forEach(i -> influential.add(fit.trees().get(i).id()));
        return node;
    }

    private static ObjectNode problem(Problem p) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("row", p.row());
        node.put("column", p.column());
        node.put("value", p.value());
        node.put("rule", p.rule().code());
        node.put("policy", p.policy().id());
        node.put("problem", p.detail());
        return node;
    }
}
