package clutchwright.app.season;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.Formats;
import clutchwright.engine.genetics.Sex;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/// What a pairing gives, before it is made. Everything asked is in the address, so that a
/// prediction is a link.
@Controller
public class PredictPage {

    private final Holding holding;
    private final Preferring preferring;

    PredictPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.preferring = preferring;
    }

    @GetMapping(Address.PREDICT)
    public Reply predict(Form form) {
        var view = new Predicting(holding, new Formats(preferring.preferences())).view(form);
        return view.form().isFaulty() ? Reply.faulty(view) : Reply.show(view);
    }

    /// What the field of a dam or a sire offers while one types.
    @GetMapping("/season/animals")
    public Reply animals(Form form) {
        var sex = form.has("sex", "FEMALE") ? Sex.FEMALE : Sex.MALE;
        var text = form.text(form.text("field"));
        var found = holding.database().read(tx -> AnimalOptions.find(tx, text, sex));
        return Reply.show(new OptionsView(AnimalOptions.choices(holding, found)));
    }
}
