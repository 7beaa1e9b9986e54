package quadmean.cruise;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import quadmean.height.FillingCurves;
import quadmean.model.CurveForm;
import quadmean.model.FillingCurve;
import quadmean.model.HeightSource;
import quadmean.units.UnitSystem;

/** Keeps the curves of an interrupted run to the last bit, so that the run goes on as it began. */
final class KeptCurves {
    private KeptCurves() {}

    static void write(List<String> regions, List<FillingCurves> curves, DataOutput out) throws IOException {
        out.writeInt(regions.size());
        for (int i = 0; i < regions.size(); i++) {
            out.writeUTF(regions.get(i));
            List<FillingCurve> ofRegion = curves.get(i).curves();
            out.writeInt(ofRegion.size());
            for (FillingCurve curve : ofRegion) {
                write(curve, out);
            }
        }
    }

    private static void write(FillingCurve c, DataOutput out) throws IOException {
        out.writeUTF(c.species());
        out.writeUTF(c.source().name());
        out.writeUTF(c.form().name());
        out.writeInt(c.parameters().length);
        for (double p : c.parameters()) {
            out.writeDouble(p);
        }
        out.writeDouble(c.ratio());
        out.writeUTF(c.units().name());
        out.writeDouble(c.breastHeight());
        out.writeInt(c.heights());
        out.writeDouble(c.scatterM());
        out.writeDouble(c.minDbhCm());
        out.writeDouble(c.maxDbhCm());
    }

    static Map<String, List<FillingCurve>> read(DataInput in) throws IOException {
        Map<String, List<FillingCurve>> curves = new HashMap<>();
        for (int n = in.readInt(); n > 0; n--) {
            List<FillingCurve> ofRegion = new ArrayList<>();
            curves.put(in.readUTF(), ofRegion);
            for (int k = in.readInt(); k > 0; k--) {
                ofRegion.add(curve(in));
            }
        }
        return curves;
    }

    private static FillingCurve curve(DataInput in) throws IOException {
        String species = in.readUTF();
        HeightSource source = HeightSource.valueOf(in.readUTF());
        CurveForm form = CurveForm.valueOf(in.readUTF());
        double[] parameters = new double[in.readInt()];
        for (int i = 0; i < parameters.length; i++) {
            parameters[i] = in.readDouble();
        }
        return new FillingCurve(
                species,
                source,
                form,
                parameters,
                in.readDouble(),
                UnitSystem.valueOf(in.readUTF()),
                in.readDouble(),
                in.readInt(),
                in.readDouble(),
                in.readDouble(),
                in.readDouble());
    }
}
