package quoin.workbench.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.Component;
import java.util.Arrays;
import javax.swing.JComboBox;
import org.junit.jupiter.api.Test;
import quoin.quantities.AngleStyle;
import quoin.quantities.DecimalMark;
import quoin.quantities.Dimension;
import quoin.quantities.Unit;
import quoin.quantities.UnitPreferences;
import quoin.workbench.DisplayUnits;

class UnitsFormTest {

    @Test
    void whatIsShownIsWhatIsChosen() {
        DisplayUnits usual = DisplayUnits.usual();
        DisplayUnits same = new UnitsForm(usual, LanguageChoice.USUAL).chosen();
        assertEquals(Unit.KG, same.preferences().unit(Dimension.MASS));
        assertEquals(Unit.KGF, same.preferences().unit(Dimension.FORCE));
        assertEquals(usual.toeInMm(), same.toeInMm());
        DisplayUnits pounds = new DisplayUnits(UnitPreferences.inchPound().withDecimalMark(DecimalMark.COMMA)
                .withAngleStyle(AngleStyle.DEGREES_MINUTES), false);
        DisplayUnits kept = new UnitsForm(pounds, LanguageChoice.USUAL).chosen();
        for (Dimension dimension : new Dimension[] {Dimension.MASS, Dimension.FORCE, Dimension.LENGTH, Dimension.STIFFNESS, Dimension.PRESSURE}) {
            assertEquals(pounds.preferences().unit(dimension), kept.preferences().unit(dimension), dimension.name());
        }
        assertEquals(pounds.preferences().decimalMark(), kept.preferences().decimalMark());
        assertEquals(pounds.preferences().angleStyle(), kept.preferences().angleStyle());
        assertEquals(pounds.toeInMm(), kept.toeInMm());
    }

    @Test
    void eachQuantityIsChosenByItself() {
        UnitsForm form = new UnitsForm(DisplayUnits.usual(), LanguageChoice.USUAL);
        JComboBox<?> weights = (JComboBox<?>) Arrays.stream(form.getComponents()).filter(JComboBox.class::isInstance)
                .findFirst().map(Component.class::cast).orElseThrow();
        weights.setSelectedItem("lb");
        UnitPreferences chosen = form.chosen().preferences();
        assertEquals(Unit.LB, chosen.unit(Dimension.MASS));
        assertEquals(Unit.LBF, chosen.unit(Dimension.FORCE));
        assertEquals(Unit.MM, chosen.unit(Dimension.LENGTH));
    }
}
