package quadmean.cruise;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quadmean.cruise.ExplainRequest.Subject;
import quadmean.estimate.EstimateRow;
import quadmean.estimate.PlotWorking;
import quadmean.estimate.SampledPlot;
import quadmean.estimate.Worksheet;
import quadmean.height.HeightCurve;
import quadmean.height.HeightedTree;
import quadmean.model.HeightSource;
import quadmean.model.Tree;
import quadmean.units.Attribute;
import quadmean.units.Basis;
import quadmean.volume.CutLog;
import quadmean.volume.EquationBook;
import quadmean.volume.ScaledPiece;
import quadmean.volume.TreeEquation;

/** Gathers what a number of a cruise is made of, from the results of the code that made it. */
public final class Explain {
    private final CruiseResult result;
    private final Worksheet sheet;
    private final ExplainRequest request;
    private final WoodBooks books;

    private Explain(CruiseResult result, Worksheet sheet, ExplainRequest request) {
        this.result = result;
        this.sheet = sheet;
        this.request = request;
        this.books = WoodBooks.of(result.design());
    }

    /**
     * Explains a number.
     *
     * @param result a cruise worked through
     * @param sheet its worksheet
     * @param request which number, as {@link ExplainRequest#parse} found it
     * @throws IllegalArgumentException if the estimate has no such number
     */
    public static Explanation of(CruiseResult result, Worksheet sheet, ExplainRequest request) {
        Explain explain = new Explain(result, sheet, request);
        if (request.subject() != Subject.TOTAL) {
            return explain.plot();
        }
        return request.attribute() == Attribute.QUADRATIC_MEAN_DIAMETER ? explain.diameter() : explain.total();
    }

    private Explanation total() {
        return new Explanation.OfTotal(
                request,
                sheet.mean(request.stratum(), request.species(), request.attribute()),
                row(Basis.PER_AREA),
                row(Basis.TOTAL));
    }

    private Explanation diameter() {
        return new Explanation.OfDiameter(
                request,
                sheet.ratio(request.stratum(), request.species(), Attribute.BASAL_AREA, Attribute.TREES),
                row(Basis.RATIO));
    }

    private EstimateRow row(Basis basis) {
        return result.estimate()
                .row(request.stratum(), request.species(), request.attribute(), basis)
                .orElseThrow(() -> new IllegalArgumentException("the estimate has no such number"));
    }

    /** The trees of a plot follow each other in the tally, as plots do in the worksheet. */
    private Explanation plot() {
        int first = 0;
        for (SampledPlot plot : sheet.plots()) {
            List<HeightedTree> trees =
                    result.trees().subList(first, first + plot.stems().size());
            boolean isIt = request.subject() == Subject.PLOT
                    ? plot.id().equals(request.id())
                    : trees.stream().anyMatch(this::isAsked);
            if (isIt) {
                return plot(plot, trees);
            }
            first += plot.stems().size();
        }
        throw new IllegalArgumentException("there is no " + request.subject().id() + " " + request.id());
    }

    private Explanation plot(SampledPlot plot, List<HeightedTree> trees) {
        PlotWorking working = sheet.plot(plot, request.species(), request.attribute());
        List<TreeWorking> shown = new ArrayList<>();
        for (int i = 0; i < trees.size(); i++) {
            boolean ofSpecies = request.species().equals(EstimateRow.ALL)
                    || trees.get(i).tree().species().equals(request.species());
            if (ofSpecies && (request.subject() == Subject.PLOT || isAsked(trees.get(i)))) {
                shown.add(tree(trees.get(i), working, i));
            }
        }
        return new Explanation.OfPlot(request, working, shown);
    }

    private boolean isAsked(HeightedTree tree) {
        return tree.tree().label().equals(request.id());
    }

    private TreeWorking tree(HeightedTree heighted, PlotWorking plot, int i) {
        Tree tree = heighted.tree();
        HeightCurve curve = tree.height() == null ? result.curves().curve(tree.species()) : null;
        return new TreeWorking(
                heighted,
                curve,
                curve == null ? Double.NaN : curve.heightMetres(tree.dbhCm()),
                equation(books.volumes(), heighted),
                equation(books.boardFeet(), heighted),
                plot.stems().get(i).stem().wood().logs().stream()
                        .map(log -> log(log, tree))
                        .toList(),
                books.biomass().find(tree.species()),
                books.greenWeights().find(tree.species()),
                plot.stems().get(i));
    }

    private static Optional<TreeEquation.Working> equation(EquationBook book, HeightedTree heighted) {
        Tree tree = heighted.tree();
        double height = heighted.source() == HeightSource.NONE ? Double.NaN : heighted.heightM();
        return book.find(tree.species())
                .map(e -> e.working(tree.dbhCm(), height, tree.detail().logs().orElse(Double.NaN)));
    }

    private LogWorking log(CutLog log, Tree tree) {
        List<ScaledPiece> pieces = log.boardFeet() > 0
                ? books.scale()
                        .map(s -> s.scale(log.smallEndCm(), log.largeEndCm(), log.lengthM())
                                .pieces())
                        .orElse(List.of())
                : List.of();
        String group = books.groupOf().getOrDefault(tree.species(), "");
        return new LogWorking(
                log,
                pieces,
                result.design().wood().prices().flatMap(p -> p.find(log.product(), tree.species(), group)));
    }
}
