package clutchwright.app.eggs;

import clutchwright.app.holding.Holding;
import clutchwright.app.holding.Surprise;
import clutchwright.app.holding.Written;
import clutchwright.app.web.Entry;
import clutchwright.app.web.Form;
import clutchwright.app.web.Preferring;
import clutchwright.app.web.Reply;
import clutchwright.app.wording.Formats;
import clutchwright.app.wording.ProblemWords;
import clutchwright.records.animals.Animal;
import clutchwright.records.checks.Edit;
import clutchwright.records.checks.Problem;
import clutchwright.records.checks.Questions;
import clutchwright.records.clutches.Eggs;
import clutchwright.records.photos.Photo;
import clutchwright.records.photos.Photos;
import clutchwright.records.store.Transaction;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Controller;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;

/// The bench: hatchlings are looked at, named and tagged one by one.
@Controller
public class BenchPage {

    private final Holding holding;
    private final Preferring preferring;

    BenchPage(Holding holding, Preferring preferring) {
        this.holding = holding;
        this.preferring = preferring;
    }

    @GetMapping("/eggs/{id:\\d+}/hatch")
    public Reply show(@PathVariable("id") long id) {
        var values = new LinkedHashMap<String, List<String>>();
        values.put("pipped", List.of(holding.today().toString()));
        values.put("sex", List.of(""));
        var form = new Form(values, new LinkedHashMap<>());
        return ClutchReading.find(holding, id)
                .<Reply>map(found -> Reply.show(bench(found).view(form)))
                .orElseGet(() -> Reply.missing(ClutchReading.NONE));
    }

    /// What was tapped so far, read back.
    @GetMapping("/eggs/{id:\\d+}/hatch/judged")
    public Reply judge(@PathVariable("id") long id, Form form) {
        return ClutchReading.find(holding, id)
                .<Reply>map(found -> Reply.show(bench(found).judge(form)))
                .orElseGet(() -> Reply.missing(ClutchReading.NONE));
    }

    @PostMapping("/eggs/{id:\\d+}/hatch")
    public Reply hatch(
            @PathVariable("id") long id,
            Form form,
            @RequestParam MultiValueMap<String, MultipartFile> files) {
        var photos =
                files.getOrDefault("photo", List.of()).stream()
                        .filter(file -> !file.isEmpty())
                        .map(BenchPage::content)
                        .toList();
        return ClutchReading.find(holding, id)
                .map(found -> hatch(found, form, photos))
                .orElseGet(() -> Reply.missing(ClutchReading.NONE));
    }

    private Reply hatch(ClutchReading found, Form form, List<byte[]> photos) {
        var bench = bench(found);
        var lines = holding.lines(found.clutch().species());
        return switch (HatchForm.read(form, found.clutch(), lines, formats())) {
            case Entry.Faulty<HatchForm>(var faulty) -> Reply.faulty(bench.view(faulty));
            case Entry.Understood<HatchForm>(var hatched) -> {
                var written =
                        Written.to(
                                holding,
                                "named a hatchling of " + found.clutch().number(),
                                tx -> write(tx, bench, hatched, photos));
                yield switch (written.result()) {
                    case Edit.Saved<Animal>(var animal) ->
                            written.going(
                                    "/eggs/%d/hatch".formatted(found.clutch().id().value()),
                                    said(bench, animal));
                    case Edit.Stale<Animal> _ ->
                            Reply.conflict("Somebody else has named a hatchling meanwhile.");
                    case Edit.Refused<Animal>(var problems) ->
                            Reply.faulty(bench.view(withFaults(form, problems)));
                };
            }
        };
    }

    private static Edit<Animal> write(
            Transaction tx, Bench bench, HatchForm hatched, List<byte[]> photos) {
        var hatching = hatched.hatching(hatched.tag().orElseGet(() -> bench.nextTag(tx)));
        var eggs = new Eggs(tx);
        // Whether the parents' sexes are on record was asked when the clutch was laid.
        var edit =
                switch (hatched.out()) {
                    case HatchForm.Out.Next() ->
                            eggs.hatchNext(
                                    bench.found().clutch().id(), hatching, Questions.ALL_THE_SAME);
                    case HatchForm.Out.Of(var egg) ->
                            eggs.hatch(egg, hatching, Questions.ALL_THE_SAME);
                    case HatchForm.Out.TwinOf(var egg) ->
                            eggs.hatchTwin(egg, hatching, Questions.ALL_THE_SAME);
                };
        if (edit instanceof Edit.Saved<Animal>(var animal)) {
            for (var photo : photos) {
                if (new Photos(tx).add(animal.id(), photo, "")
                        instanceof Edit.Refused<Photo>(var problems)) {
                    tx.abandon();
                    return new Edit.Refused<>(problems);
                }
            }
        }
        return edit;
    }

    private String said(Bench bench, Animal animal) {
        var line = "%s is named: %s.".formatted(animal.tag(), holding.line(animal.id()).inWords());
        return Stream.of(
                        Optional.of(line),
                        bench.surprise(animal.id()),
                        Surprise.of(holding, animal.id()))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(" "));
    }

    private Form withFaults(Form form, List<Problem> problems) {
        var words = new ProblemWords(id -> Tags.of(holding, id), formats());
        var faulty = form;
        for (var problem : problems) {
            faulty =
                    faulty.withFault(
                            HatchForm.place(ProblemWords.fieldOf(problem)), words.of(problem));
        }
        return faulty;
    }

    private Bench bench(ClutchReading found) {
        return new Bench(holding, found, preferring.preferences().tagPattern());
    }

    private Formats formats() {
        return new Formats(preferring.preferences());
    }

    private static byte[] content(MultipartFile file) {
        try {
            return file.getBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
