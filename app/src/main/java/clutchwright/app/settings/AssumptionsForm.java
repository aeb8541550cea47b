package clutchwright.app.settings;

import clutchwright.app.web.Entry;
import clutchwright.app.web.Fields;
import clutchwright.app.web.Form;
import clutchwright.engine.inference.Assumptions;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;

/// The form of what is assumed where the records say nothing, in percent.
final class AssumptionsForm {

    // Of a series of twenty alleles not more than everything.
    private static final double MOST_BACKGROUND = 5;
    private static final double MOST_MISREAD = 20;

    private AssumptionsForm() {}

    static Form of(Assumptions assumptions) {
        return Form.of(
                Map.of(
                        "background", percent(assumptions.background()),
                        "misread", percent(assumptions.misread()),
                        "acquired", percent(assumptions.acquiredForLook()),
                        "parthenogenesis", percent(assumptions.parthenogenesis())));
    }

    /// @param now what is assumed now, for what the form does not ask
    static Entry<Assumptions> read(Form form, Assumptions now) {
        var fields = new Fields(form);
        var background = fields.number("background", 0, MOST_BACKGROUND);
        var misread = fields.number("misread", 0, MOST_MISREAD);
        var acquired = fields.number("acquired", 0, 100);
        var parthenogenesis = fields.number("parthenogenesis", 0, 100);
        return fields.into(
                () ->
                        new Assumptions(
                                background.value() / 100,
                                misread.value() / 100,
                                acquired.value() / 100,
                                parthenogenesis.value() / 100,
                                now.secondDivision(),
                                now.claimOfHalfKnown(),
                                now.onlyAllelesMet()));
    }

    private static String percent(double chance) {
        return BigDecimal.valueOf(chance)
                .multiply(BigDecimal.valueOf(100))
                .round(MathContext.DECIMAL32)
                .stripTrailingZeros()
                .toPlainString();
    }
}
