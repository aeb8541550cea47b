package clutchwright.records.exchange;

import clutchwright.engine.genetics.Sex;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SequencedMap;

/// The example of three hundred animals: four generations, drawn with a fixed seed. Young have
/// their genes from their parents, and are stated to be het as a keeper would say who knows what
/// is stated of these.
final class ThreeHundred {

    private static final List<String> SHOWS =
            List.of(
                    "Pastel",
                    "Enchi",
                    "Mojave",
                    "Lesser",
                    "Banana",
                    "Pinstripe",
                    "Yellow Belly",
                    "Fire",
                    "Leopard",
                    "Orange Dream",
                    "Cinnamon",
                    "Black Pastel",
                    "GHI");
    private static final List<String> HETS =
            List.of("Clown", "Piebald", "Ghost", "Lavender Albino", "Desert Ghost");
    private static final Map<String, Double> CHANCES =
            Map.of("het ", 1.0, "66% het ", 2.0 / 3, "50% het ", 0.5);

    private final Random random = new Random(300);

    /// Which allele of a pair is passed on.
    private final Random meiosis = new Random(301);
    private final List<Snake> all = new ArrayList<>();
    private final StringBuilder text =
            new StringBuilder("tag,name,sex,hatched,sire,dam,stated,status\n");

    /// @param shows its single copies of genes that show in one copy
    /// @param copies of the genes that show in two
    /// @param stated the chance that it carries each of these, as stated; 2 if it shows it
    private record Snake(
            String tag,
            Sex sex,
            int year,
            List<String> shows,
            Map<String, Integer> copies,
            Map<String, Double> stated) {}

    private ThreeHundred() {}

    static String asText() {
        var made = new ThreeHundred();
        for (int i = 0; i < 300; i++) {
            made.add(i);
        }
        return made.text.toString();
    }

    private void add(int number) {
        int generation = number < 40 ? 0 : number < 110 ? 1 : number < 200 ? 2 : 3;
        int year = 2012 + 4 * generation - (generation == 0 ? random.nextInt(3) : 0);
        var sex = number % 3 == 0 ? Sex.MALE : Sex.FEMALE;
        var tag = "%02d-%03d".formatted(year % 100, number + 1);
        if (generation == 0) {
            var snake = bought(tag, sex, year);
            write(snake, Integer.toString(year), "", "", "kept");
            return;
        }
        var dam = any(Sex.FEMALE, year);
        var sire = any(Sex.MALE, year);
        var status =
                generation == 1
                        ? "kept"
                        : List.of("kept", "hold back", "for sale", "sold").get(random.nextInt(4));
        var hatched = LocalDate.of(year, 6, 1).plusDays(random.nextInt(90)).toString();
        write(young(tag, sex, year, dam, sire), hatched, sire.tag(), dam.tag(), status);
    }

    private Snake any(Sex sex, int year) {
        var ready = all.stream().filter(s -> s.sex() == sex && s.year() < year - 2).toList();
        return ready.get(random.nextInt(ready.size()));
    }

    private Snake bought(String tag, Sex sex, int year) {
        var shows = new ArrayList<String>();
        var first = SHOWS.get(random.nextInt(SHOWS.size()));
        if (random.nextInt(12) != 0) {
            shows.add(first);
        }
        if (!shows.isEmpty() && random.nextInt(2) == 0) {
            var second = SHOWS.get(random.nextInt(SHOWS.size()));
            if (!complexOf(second).equals(complexOf(first))) {
                shows.add(second);
            }
        }
        var copies = new LinkedHashMap<String, Integer>();
        var stated = new LinkedHashMap<String, Double>();
        if (random.nextInt(2) == 0) {
            var chance =
                    CHANCES.get(List.of("het ", "66% het ", "50% het ").get(random.nextInt(3)));
            var gene = HETS.get(random.nextInt(HETS.size()));
            stated.put(gene, chance);
            copies.put(gene, meiosis.nextDouble() < chance ? 1 : 0);
        }
        return new Snake(tag, sex, year, shows, copies, stated);
    }

    private Snake young(String tag, Sex sex, int year, Snake dam, Snake sire) {
        var shows = new LinkedHashMap<String, String>();
        for (var parent : List.of(dam, sire)) {
            for (var gene : parent.shows()) {
                // Of two alleles of one place the young has one here: supers are kept elsewhere.
                if (meiosis.nextBoolean()) {
                    shows.putIfAbsent(complexOf(gene), gene);
                }
            }
        }
        var copies = new LinkedHashMap<String, Integer>();
        var stated = new LinkedHashMap<String, Double>();
        for (var gene : HETS) {
            int count = passed(dam, gene) + passed(sire, gene);
            copies.put(gene, count);
            var chance = count == 2 ? 2.0 : chanceOfHet(given(dam, gene), given(sire, gene));
            if (chance > 0.45) {
                stated.put(gene, chance);
            }
        }
        return new Snake(tag, sex, year, List.copyOf(shows.values()), copies, stated);
    }

    private int passed(Snake parent, String gene) {
        return meiosis.nextInt(2) < parent.copies().getOrDefault(gene, 0) ? 1 : 0;
    }

    /// The chance that an egg or a sperm has it, as far as stated.
    private static double given(Snake parent, String gene) {
        return Math.min(1, parent.stated().getOrDefault(gene, 0.0) / 2);
    }

    /// Of one that does not show it.
    private static double chanceOfHet(double byDam, double bySire) {
        return (byDam * (1 - bySire) + bySire * (1 - byDam)) / (1 - byDam * bySire);
    }

    private static String complexOf(String gene) {
        return switch (gene) {
            case "Mojave", "Lesser" -> "blue";
            case "Cinnamon", "Black Pastel" -> "dark";
            default -> gene;
        };
    }

    private void write(Snake snake, String hatched, String sire, String dam, String status) {
        all.add(snake);
        var genes = new ArrayList<String>();
        sorted(snake.stated()).forEach((gene, chance) -> genes.addAll(shown(gene, chance)));
        genes.addAll(snake.shows());
        if (genes.isEmpty()) {
            genes.add("Normal");
        }
        sorted(snake.stated()).forEach((gene, chance) -> genes.addAll(carried(gene, chance)));
        text.append(
                "%s,,%s,%s,%s,%s,%s,%s\n"
                        .formatted(
                                snake.tag(),
                                snake.sex() == Sex.MALE ? "male" : "female",
                                hatched,
                                sire,
                                dam,
                                String.join(" ", genes),
                                status));
    }

    private static SequencedMap<String, Double> sorted(Map<String, Double> stated) {
        var sorted = new LinkedHashMap<String, Double>();
        HETS.stream()
                .filter(stated::containsKey)
                .forEach(gene -> sorted.put(gene, stated.getOrDefault(gene, 0.0)));
        return Collections.unmodifiableSequencedMap(sorted);
    }

    private static List<String> shown(String gene, double chance) {
        return chance == 2 ? List.of(gene) : List.of();
    }

    private static List<String> carried(String gene, double chance) {
        return chance == 2
                ? List.of()
                : List.of((chance > 0.9 ? "het " : chance > 0.6 ? "66% het " : "50% het ") + gene);
    }
}
