package quadmean.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quadmean.support.SmallWoodlot;

/** Designs of logs, prices and weights broken as people break them: refused, with the key and what to do. */
class BrokenWoodTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "amount = 500 | amount = -500 | price.amount = -500 is not a number of 0 or more",
                "amount = 500 | amount = nan | price.amount = NaN",
                "amount = 500 | amount = '500' | price.amount must be a number",
                "product = \"PULP\" | product = \"PLUP\" | there is no product \"PLUP\"; did you mean \"PULP\"?",
                "per = \"mbf\" | per = \"MBF\" | price.per = \"MBF\" is not one of",
                "per = \"ton\" | per = \"mbf\" | this product is measured in cubic volume alone",
                "product = \"PULP\" | product = \"SAW\" | two prices for \"SAW\"",
                "lengths = [8] | lengths = [0.4] | a log of 0.4 ft is not longer than its trim of 0.5",
                "lengths = [8] | lengths = [] | lists the lengths it is cut to",
                "lengths = [8] | lengths = [inf] | which is not a length above 0",
                "lengths = [8] | lengths = [1e18] | which is not a length above 0",
                "code = \"PULP\" | code = \"SAW\" | two products have this code; rename one",
                "code = \"PULP\" | code = \" \" | product.code must not be empty",
                "code = \"PULP\" | code = \"PÜLP\" | there is no product \"PULP\"",
                "min_small_end = 4 | min_small_end = 0 | product.min_small_end = 0 is not a number above 0",
                "defect = 5 | defect = 140 | product.defect = 140 is not a percentage from 0 to 100",
                "\"doyle\" | \"doile\" | did you mean \"doyle\"?",
                "rule = \"doyle\" | rule = 5 | logs.rule",
                "rule = \"doyle\" | stumps = 3 | did you mean \"stump\"?",
                "[taper.\"*\"] | [taper.PSMX] | \"PSMX\" is no species or group of this design",
                "p = 1 | p = 1e9 | from 0.1 to 3",
                "factor = 50 | factor = 830 | check factor and unit",
                "\"lb/ft3\" | \"lb\" | green_weight.*.unit = \"lb\" is not one of kg/m3, lb/ft3",
                "form = \"power_sum\" | library = \"jenkins-2003/pien\" | near it: jenkins-2003/pine",
                "powers = [[0.1, 2]] | powers = [0.1, 2] | biomass.*.powers",
                "currency = \"EUR\" | currency = \"\" | prices.currency must not be empty",
                "[prices] | [[prices]] | prices must be a table [prices]",
                "area = 40 | area = 40\\ntarget_attribute = \"valu\" | did you mean \"value\"?",
                "[logs] | [output]\\nmerchantable_dbh = 2\\n[logs] | the top diameter lies above the dbh"
            })
    void isRefusedInWords(String old, String now, String words) {
        SmallWoodlot broken = new SmallWoodlot().with(old, now.replace("\\n", "\n"));
        refused(broken, words);
    }

    @ParameterizedTest
    @CsvSource({
        "140, 140 % of defect would leave a negative net volume",
        "-3, -3 % of defect would leave more wood than there is",
        "ten, is not a plain number"
    })
    void defectThatCannotBeIsRefused(String defect, String words) {
        refused(new SmallWoodlot().where(",10\n", "," + defect + "\n"), words);
    }

    @ParameterizedTest
    @CsvSource({
        "value, 'the tables [logs], [prices] and [[price]]'",
        "carbon, a [biomass.CODE] table",
        "green_weight, a [green_weight.CODE] table",
        "net_log_volume, 'the tables [logs], [[product]] and [taper.CODE]'",
        "board_feet, 'logs.rule in a table [logs], or [board_feet.CODE] tables'"
    })
    void aTargetThatNothingGivesNamesTheTables(String target, String tables) {
        String text = new SmallWoodlot().design();
        SmallWoodlot bare = new SmallWoodlot(text.substring(0, text.indexOf("[volume")), new SmallWoodlot().tally());
        refused(bare.with("area = 40", "area = 40\ntarget_attribute = \"" + target + "\""), "needs " + tables);
    }

    private void refused(SmallWoodlot lot, String words) {
        Run run = Run.of("estimate", lot.write(folder), "--out", folder.resolve("out"));
        run.assertCode(1);
        assertTrue(run.err().contains(words), run.err());
        assertTrue(run.err().contains("to do:"), run.err());
        assertFalse(run.err().contains("Exception") || run.err().contains("\tat "), run.err());
    }
}
