package clutchwright.app.holding;

import clutchwright.app.web.Entering;
import clutchwright.app.web.Flash;
import clutchwright.app.web.Reply;
import clutchwright.records.store.Entered;
import clutchwright.records.store.EntryKey;
import java.time.LocalDate;
import java.util.Optional;

/// Keys of entries beside what was written under them.
final class EnteringInStore implements Entering {

    private final Holding holding;
    private final String house;

    EnteringInStore(Holding holding) {
        this.holding = holding;
        this.house = holding.database().house();
    }

    @Override
    public String house() {
        return house;
    }

    @Override
    public LocalDate today() {
        return holding.today();
    }

    @Override
    public Optional<Reply.Go> answered(String key) {
        return EntryKey.find(key).flatMap(holding.database()::entered).map(EnteringInStore::reply);
    }

    @Override
    public void answer(String key, Reply.Go reply) {
        EntryKey.find(key)
                .ifPresent(
                        found ->
                                holding.database()
                                        .answered(
                                                holding.author(),
                                                found,
                                                new Entered.Answer(
                                                        reply.path(),
                                                        reply.flash()
                                                                .map(Flash::text)
                                                                .orElse(""))));
    }

    private static Reply.Go reply(Entered entered) {
        var answer =
                entered.answer().orElseGet(() -> new Entered.Answer("/", entered.what() + "."));
        var go = Reply.go(answer.path());
        return entered.stands()
                ? go.saying(answer.said(), "Undo", Written.undo(entered.change()))
                : go.saying(answer.said() + " It was taken back since.");
    }
}
