package clutchwright.records;

import clutchwright.engine.genetics.LocusId;
import clutchwright.engine.genetics.Sex;
import clutchwright.records.animals.Animal;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Hatched;
import clutchwright.records.animals.Particulars;
import clutchwright.records.animals.Tag;
import clutchwright.records.statements.GeneText;
import clutchwright.records.statements.Mention;
import clutchwright.records.store.Author;
import clutchwright.records.store.Database;
import clutchwright.records.store.Work;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;

/// Records of a test, on a real file, on one fixed day in May 2024.
public final class Notebook implements AutoCloseable {

    public static final String ROYAL = "python-regius";
    public static final LocalDate TODAY = LocalDate.of(2024, 5, 10);
    public static final Clock CLOCK =
            Clock.fixed(Instant.parse("2024-05-10T12:00:00Z"), ZoneOffset.UTC);
    public static final Author ADA = new Author("Ada");
    public static final Author BO = new Author("Bo");

    private final Database database;

    public Notebook(Path folder) {
        this(Database.open(folder, CLOCK));
    }

    public Notebook(Database database) {
        this.database = database;
    }

    public Database database() {
        return database;
    }

    public <R> R write(Work<R> work) {
        return database.write(ADA, "test", work);
    }

    public <R> R write(String what, Work<R> work) {
        return database.write(ADA, what, work);
    }

    public <R> R read(Work<R> work) {
        return database.read(work);
    }

    /// As [#read(Work)], for assertions that need to know what they are about.
    public <R> List<R> list(Work<List<R>> work) {
        return database.read(work);
    }

    public Animal female(String tag) {
        return add(animal(tag).withSex(Sex.FEMALE));
    }

    public Animal male(String tag) {
        return add(animal(tag).withSex(Sex.MALE));
    }

    public Animal add(Particulars animal) {
        return write("enter " + animal.tag(), tx -> new Animals(tx).add(animal).theSaved());
    }

    public Animal now(Animal animal) {
        return read(tx -> new Animals(tx).theAnimal(animal.id()));
    }

    public static Particulars animal(String tag) {
        return Particulars.of(new Tag(tag), ROYAL);
    }

    public static Hatched on(int year, int month, int day) {
        return new Hatched.OnDay(LocalDate.of(year, month, day));
    }

    public static GeneText clownHetPiebald() {
        return new GeneText(
                "clown het pied",
                "Clown het Piebald",
                ROYAL,
                List.of(
                        new Mention(new LocusId("clown"), "Clown", true),
                        new Mention(new LocusId("piebald"), "Piebald", false)));
    }

    @Override
    public void close() {
        database.close();
    }
}
