package quadmean.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.model.PlotFacts;
import quadmean.model.PlotFacts.Phase;
import quadmean.model.PlotFacts.Place;
import quadmean.model.Policy;
import quadmean.model.Tally;
import quadmean.support.SmallDesign;
import quadmean.support.Tolerance;

/** What the list of plots says of plots, and what is wrong with it. */
class PlotFactsTest {
    private static final String LIST = "[selection]\nplot_list = \"plan.csv\"\n";

    @TempDir
    Path folder;

    private Tally read(String plan, String estimate) throws IOException {
        return read(plan, estimate, "plot,tree,species,dbh,height\n1,1,PSME,30,20\n2,1,PSME,25,18\n3,1,PSME,40,24\n");
    }

    private Tally read(String plan, String estimate, String tally) throws IOException {
        Files.writeString(folder.resolve("plan.csv"), plan.replace('/', '\n'));
        Files.writeString(folder.resolve("tally.csv"), tally);
        return TallyReader.read(new SmallDesign().plus(LIST + estimate).valid(folder));
    }

    private static List<String> where(Tally tally) {
        return tally.problems().stream()
                .map(p -> p.rule().code() + " " + p.file() + ":" + p.row() + " " + p.column() + "=" + p.value())
                .toList();
    }

    @Test
    void everyColumnIsCarriedToItsPlot() throws IOException {
        Tally tally = read(
                "plot,auxiliary,cluster,cluster_size,class,chance,draws,row,column,strip_length,phase,owner\n"
                        + "1,12.5,c1,4,old,0.25,1,-1,7,40,2,x\n2,,,,,,,,,,,\n3,0,c2,4,young,1,1,2,7,,2,y\n4,8,,,old,,,,,,1,\n",
                "");
        assertEquals(List.of(), where(tally));
        PlotFacts first = tally.facts().get("1");
        assertEquals(new PlotFacts(Phase.BOTH, 12.5, "c1", 4, "old", 0.25, 1, new Place(-1, 7), 40), first);
        assertEquals(PlotFacts.NONE, tally.facts().get("2"));
        assertTrue(tally.listed().get(3).isFirstPhaseOnly(), "a plot nobody visits is not missed in the tally");
        assertEquals(3, tally.plots().size());
    }

    @Test
    void stripsAreMeasuredInTheUnitOfTheDesign() throws IOException {
        Files.writeString(folder.resolve("plan.csv"), "plot,strip_length\n1,66\n");
        Files.writeString(folder.resolve("tally.csv"), "plot,tree,species,dbh,height\n1,1,PSME,30,20\n");
        Tally tally = TallyReader.read(
                new SmallDesign().with("\"metric\"", "\"us\"").plus(LIST).valid(folder));
        // a chain of 66 ft is 20.1168 m by definition
        Tolerance.ROUNDING.check(20.1168, tally.facts().get("1").stripLength(), "strip");
    }

    /** Each row of a bad list, with what is found in it; slashes stand for line ends. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "mean | plot,auxiliary/1,many/2,1/3,1 | plan.csv:2 auxiliary=many",
                "mean | plot,chance/1,1.2/2,1/3,0 | plan.csv:2 chance=1.2; plan.csv:4 chance=0",
                "mean | plot,row,column/1,1,1/2,1,1/3,1.5,2 | plan.csv:3 row=1; plan.csv:4 row=1.5",
                "mean | plot,cluster,cluster_size/1,a,4/2,a,5/3,a,0 | plan.csv:3 cluster_size=5; plan.csv:4 cluster_size=0",
                "mean | plot,draws/1,2/2,1.5/3,1 | plan.csv:2 draws=2; plan.csv:3 draws=1.5",
                "mean | plot,phase/1,both/2,2/3,2 | plan.csv:2 phase=both",
                "mean | plot,phase/1,1/2,2/3,2 | design.toml:0 phase=1",
                "mean | plot,strip_length/1,-4/2,2/3,2 | plan.csv:2 strip_length=-4",
                "double_ratio | plot,auxiliary/1,1/2,-3/3,4 | plan.csv:2 phase=; plan.csv:3 auxiliary=-3; plan.csv:3 phase=;"
                        + " plan.csv:4 phase=",
                "double_ratio | plot,phase,auxiliary/1,2,0/2,2,0/3,2,0 | design.toml:0 auxiliary=stand",
                "double_regression | plot,phase,auxiliary/1,2,5/2,2,5/3,2,5 | design.toml:0 auxiliary=stand",
                "double_stratified | plot,phase,class/1,2,a/2,2,a/3,2,a/4,1,b | design.toml:0 class=b",
                "cluster | plot,clusters/1,a/2,b/3,c | plan.csv:2 cluster=; plan.csv:3 cluster=; plan.csv:4 cluster=",
                "cluster | plot,cluster,cluster_size/1,a,2/2,a,2/3,b,2 | design.toml:0 cluster_size=b",
                "two_stage | plot,cluster/1,a/2,a/3,b | plan.csv:2 cluster_size=; plan.csv:3 cluster_size=;"
                        + " plan.csv:4 cluster_size=",
                "hansen_hurwitz | plot,chance/1,0.1/2,/3,0.1 | plan.csv:3 chance="
            })
    void whatCannotBeUsedIsRefusedWithItsPlace(String estimator, String plan, String expected) throws IOException {
        Tally tally = read(plan, "[estimate]\nestimator = \"" + estimator + "\"\n");
        assertEquals(expected, String.join("; ", where(tally)).replace("plot-fact-unusable ", ""));
        assertTrue(tally.problems().stream().allMatch(p -> p.policy() == Policy.REFUSE));
    }

    @Test
    void aMissingColumnNamesTheNearest() throws IOException {
        Tally tally = read("plot,clusters\n1,a\n2,a\n3,b\n", "[estimate]\nestimator = \"cluster\"\n");
        String detail = tally.problems().get(0).detail();
        assertTrue(detail.contains("did you mean \"clusters\"?"), detail);
    }

    @Test
    void classesWithoutAnAreaAndAreasWithoutAPlotAreNamed() throws IOException {
        Tally tally = read(
                "plot,class\n1,old\n2,old\n3,burn\n",
                "[estimate]\nestimator = \"post_stratified\"\n[[estimate.post_stratum]]\ncode = \"old\"\narea = 6\n"
                        + "[[estimate.post_stratum]]\ncode = \"young\"\narea = 4\n");
        assertEquals(
                List.of("plot-fact-unusable design.toml:0 class=young", "plot-fact-unusable design.toml:0 class=burn"),
                where(tally));
    }

    @Test
    void moreClustersThanThereAreAndMoreNeighboursThanFit() throws IOException {
        String estimate =
                "finite_population = \"correct\"\n[estimate]\nestimator = \"two_stage\"\nclusters_in_stand = 2\n";
        Tally tally = read("plot,cluster,cluster_size\n1,a,4\n2,b,4\n3,c,4\n", estimate);
        assertEquals(List.of("plot-fact-unusable design.toml:0 clusters_in_stand=stand"), where(tally));
        tally = read("plot,cluster,cluster_size\n1,a,1\n2,a,1\n3,b,4\n", estimate);
        assertEquals(List.of("plot-fact-unusable design.toml:0 cluster_size=a"), where(tally));
    }

    @Test
    void aPlotKeptThoughNotListedIsOfNoUseToAnEstimatorThatNeedsTheList() throws IOException {
        Tally tally = read(
                "plot,auxiliary\n1,3\n2,4\n",
                "[estimate]\nestimator = \"ratio\"\nauxiliary_mean = 4\n[policy]\nplot-not-listed = \"keep\"\n");
        assertEquals("plot-fact-unusable design.toml:0 plot=3", where(tally).get(1));
    }

    @Test
    void aSinglePlotIsRefusedWhereTheDesignAsksForThat() throws IOException {
        String one = "plot,tree,species,dbh,height\n1,1,PSME,30,20\n";
        Tally tally = read("plot\n1\n", "[estimate]\none_plot = \"refuse\"\n", one);
        assertEquals(List.of("stratum-one-plot design.toml:0 one_plot=stand"), where(tally));
        assertTrue(read("plot\n1\n", "", one).problems().isEmpty(), "and otherwise not");
    }
}
