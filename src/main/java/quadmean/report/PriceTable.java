package quadmean.report;

import java.util.List;
import quadmean.cruise.CruiseResult;
import quadmean.estimate.EstimateRow;
import quadmean.model.Price;
import quadmean.model.PriceList;
import quadmean.report.HtmlTable.Cell;

/** The prices that the value of logs was worked out with. */
final class PriceTable {
    private PriceTable() {}

    static String markup(CruiseResult result) {
        return result.design().wood().prices().map(list -> table(result, list)).orElse("");
    }

    private static String table(CruiseResult result, PriceList list) {
        String date = list.date().isEmpty() ? "" : ", " + list.date();
        HtmlTable table = HtmlTable.of(
                "Prices in " + list.currency() + date + ": " + list.provenance().source() + " ("
                        + list.provenance().standing().label() + ")",
                List.of(Cell.text("Product"), Cell.text("Species"), Cell.number("Price"), Cell.text("For one")));
        for (Price price : list.prices()) {
            table.row(List.of(
                    Cell.text(Names.product(result.design(), price.product())),
                    Cell.text(species(result, list, price)),
                    Cell.number(Rounding.decimals(2).text(price.amount())),
                    Cell.text(price.unit().label() + ", net")));
        }
        return table.markup();
    }

    private static String species(CruiseResult result, PriceList list, Price price) {
        if (!price.species().equals(EstimateRow.ALL)) {
            return Names.species(result.design(), price.species());
        }
        boolean alone = list.prices().stream()
                        .filter(p -> p.product().equals(price.product()))
                        .count()
                == 1;
        return alone ? "all" : "any other";
    }
}
