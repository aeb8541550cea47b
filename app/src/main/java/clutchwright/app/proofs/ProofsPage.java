package clutchwright.app.proofs;

import clutchwright.app.holding.Holding;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.Formats;
import clutchwright.engine.pedigree.AnimalId;
import clutchwright.engine.proof.CarrierTest;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/// What each animal may carry and what would settle it: all open questions, and one of them.
@Controller
public class ProofsPage {

    private final Holding holding;
    private final Preferring preferring;
    private final ProofBoard board;

    ProofsPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.preferring = preferring;
        this.board = new ProofBoard(holding);
    }

    @GetMapping("/proofs")
    public Reply show(Form query) {
        return Reply.show(ProofsView.of(board.now(), query));
    }

    /// What is on record and cannot all be true.
    @GetMapping("/proofs/doubt")
    public Reply doubtful() {
        return Reply.show(DoubtView.of(holding, board.now()));
    }

    /// One question; its figures are those of the list.
    @GetMapping("/proofs/{id:[0-9]{1,18}}")
    public Reply question(@PathVariable long id, Form query) {
        var state = board.now();
        if (state.last().isEmpty()) {
            return Reply.show(ProofsView.of(state, query));
        }
        var worked = state.last().get();
        var animal = worked.find(new AnimalId(id));
        var inference = animal.flatMap(worked::inference);
        var allele = inference.flatMap(found -> OpenQuestions.find(found, query.text("gene")));
        if (animal.isEmpty() || inference.isEmpty() || allele.isEmpty()) {
            return Reply.missing(
                    "There is no such question: the animal or the gene is not on record.");
        }
        return CarrierTest.of(inference.get(), animal.get().id(), allele.get())
                .<Reply>map(
                        test ->
                                Reply.show(
                                        new QuestionSheet(
                                                        holding,
                                                        worked,
                                                        inference.get(),
                                                        new Formats(preferring.preferences()))
                                                .view(animal.get(), test, state.fresh(), query)))
                .orElseGet(
                        () ->
                                Reply.missing(
                                        "What is recorded of this gene cannot all be true, so nothing"
                                                + " follows of who carries it."));
    }
}
