package quadmean.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.Arrays;
import java.util.HashSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class AttributeTest {

    @ParameterizedTest
    @EnumSource(Attribute.class)
    void unitsOfTheTwoSystemsMeasureTheSame(Attribute attribute) {
        for (Basis basis : Basis.values()) {
            Unit metric = attribute.unit(basis, UnitSystem.METRIC);
            Unit us = attribute.unit(basis, UnitSystem.US);
            assertEquals(metric.quantity(), us.quantity(), attribute + " " + basis);
        }
    }

    @Test
    void valuesPerAreaAndTotalsHaveTheUnitsOfTheTrade() {
        assertEquals(Unit.SQUARE_FEET_PER_ACRE, Attribute.BASAL_AREA.unit(Basis.PER_AREA, UnitSystem.US));
        assertEquals(Unit.SQUARE_METRE, Attribute.BASAL_AREA.unit(Basis.TOTAL, UnitSystem.METRIC));
        assertEquals(Unit.CUBIC_METRES_PER_HECTARE, Attribute.VOLUME.unit(Basis.PER_AREA, UnitSystem.METRIC));
        assertEquals(Unit.CUBIC_FOOT, Attribute.VOLUME.unit(Basis.TOTAL, UnitSystem.US));
        assertEquals(Unit.INCH, Attribute.QUADRATIC_MEAN_DIAMETER.unit(Basis.RATIO, UnitSystem.US));
    }

    @Test
    void namesForFilesAreUnique() {
        assertEquals(
                Attribute.values().length,
                new HashSet<>(Arrays.stream(Attribute.values())
                                .map(Attribute::id)
                                .toList())
                        .size());
        assertEquals("basal area", Attribute.BASAL_AREA.label());
        assertEquals("per_area", Basis.PER_AREA.id());
        assertNotEquals(Basis.TOTAL.id(), Basis.RATIO.id());
        assertEquals("topo", AngleScale.TOPOGRAPHIC.id());
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void aSystemHasOneUnitForEachQuantity(UnitSystem system) {
        assertEquals(Quantity.LENGTH, system.diameter().quantity());
        assertEquals(Quantity.LENGTH, system.length().quantity());
        assertEquals(Quantity.GROUND_AREA, system.area().quantity());
        assertEquals(Quantity.STEM_AREA_PER_AREA, system.basalAreaFactor().quantity());
        assertEquals(Quantity.VOLUME, system.volume().quantity());
        assertEquals(system == UnitSystem.US ? "us" : "metric", system.id());
    }
}
