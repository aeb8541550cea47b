package clutchwright.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import clutchwright.app.holding.Written;
import clutchwright.engine.genetics.Sex;
import clutchwright.records.animals.Animals;
import clutchwright.records.animals.Tag;
import clutchwright.records.checks.Questions;
import clutchwright.records.clutches.Clutch;
import clutchwright.records.clutches.Clutches;
import clutchwright.records.clutches.Eggs;
import clutchwright.records.clutches.Hatching;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import org.junit.jupiter.api.Test;

/// Projects in a house of their own: from the empty page to routes, and what they say.
class ProjectsScreenTest extends OwnHouse {

    @Test
    void an_empty_page_teaches_and_a_faulty_form_names_every_fault() {
        visit("/projects");
        assertThat(page().locator(".empty")).containsText("takes more than one generation");
        inspect("projects-empty");
        visit("/projects/new");
        page().getByLabel("Goal").fill("Clown Zzyzx");
        page().getByLabel("Clutches a season").fill("-1");
        page().getByLabel("Animals that could be bought").fill("Clown 250");
        button("Save").click();
        assertThat(page().locator(".field.faulty")).hasCount(4);
        assertThat(page().locator("main")).containsText("Line 1: write 1.0 or 0.1");
        inspect("projects-faulty");
    }

    @Test
    void a_double_visual_is_planned_looked_for_changed_and_removed() {
        var stock = new Stock(holding());
        stock.female("F-1", "Clown");
        stock.male("M-1", "Piebald");
        begin("Two in one", "Clown Piebald");
        assertThat(page().locator("main")).containsText("Nobody has looked for routes yet.");
        inspect("project-new");

        look();
        var steps = page().locator(".steps > li");
        assertThat(steps.first()).containsText("F-1");
        assertThat(steps.first()).containsText("M-1");
        // Every hatchling of two visuals is a double het, half of them of each sex.
        assertThat(steps.first()).containsText("1/2, that is 50 % of the hatchlings");
        assertThat(page().locator(".keep.goal").last()).containsText("Clown Piebald");
        assertThat(page().locator("svg.route .route-step").first()).isVisible();
        steps.first().getByText("Why?").click();
        assertThat(steps.first()).containsText("worked out exactly");
        inspect("project");

        visit("/projects");
        assertThat(page().locator(".projects")).containsText("clutches on average");
        inspect("projects");

        visit("/projects/1/edit");
        page().getByLabel("By a laboratory’s test").check();
        page().getByLabel("Price of one test").fill("45");
        page().getByLabel("Animals that could be bought").fill("1.0 Clown het Piebald: 900");
        inspect("project-edit");
        button("Save").click();
        look();
        assertThat(page().locator("main")).containsText("Every hatchling is tested");
        page().locator(".routes a").filter(having("buys for 900")).first().click();
        assertThat(page().locator("main")).containsText("a Clown het Piebald male to buy");
        inspect("project-bought");

        visit("/projects/1/edit");
        button("Remove this project").click();
        assertThat(page().locator(".empty")).isVisible();
        button("Undo").click();
        visit("/projects");
        assertThat(page().locator(".projects")).containsText("Two in one");
    }

    @Test
    void a_goal_that_cannot_be_says_why() {
        var stock = new Stock(holding());
        stock.female("F-1", "Clown");
        begin("Without a male", "Clown Piebald");
        button("Look for routes").click();
        assertThat(page().locator(".empty")).containsText("No route.");
        inspect("project-refused");
    }

    @Test
    void a_step_of_a_project_counts_in_the_seasons_plan() {
        var stock = new Stock(holding());
        stock.female("F-1", "Clown");
        stock.male("M-1", "Piebald");
        stock.male("M-2", "Pastel");
        begin("Two in one", "Clown Piebald");
        visit("/season/plan");
        page().getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Work it out"))
                .click();
        assertThat(page().locator(".by-female > li").first()).containsText("M-1");
        assertThat(page().locator(".by-female > li").first()).containsText("step of Two in one");
        assertThat(
                        page().locator("section", new Page.LocatorOptions().setHasText("Projects"))
                                .last())
                .containsText("from F-1 × M-1");
    }

    /// One is what the project is for; her plain brother is no more than what the next clutch
    /// brings anyway.
    @Test
    void a_hatchling_that_brings_the_goal_nearer_is_to_be_held_back() {
        var stock = new Stock(holding());
        var fen = stock.female("F-1", "Clown het Piebald");
        var moss = stock.male("M-1", "Piebald het Clown");
        var clutch = stock.clutch(fen, moss, holding().today().minusDays(90), 2, 0);
        begin("Two in one", "Clown Piebald");
        visit("/projects/hold-backs?clutch=" + clutch.id().value());
        assertThat(page().locator(".empty")).containsText("Name them at the bench first");
        hatch(clutch, "H-1", Sex.FEMALE, "Clown Piebald");
        hatch(clutch, "H-2", Sex.MALE, "Normal");
        visit("/season/plan/prices");
        page().getByLabel("One price a line").fill("Normal: 40\nClown Piebald: 900");
        button("Save").click();

        visit("/eggs/" + clutch.id().value());
        page().getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Which to hold back"))
                .click();
        inspect("hold-backs-before");
        page().locator(".head button.main").click();
        assertThat(page().locator(".projects > li")).hasCount(2);
        var daughter = page().locator(".projects > li").filter(having("H-1"));
        assertThat(daughter).containsText("sells for 900");
        assertThat(daughter).containsText("Hold back for Two in one");
        assertThat(daughter).containsText("Two in one: reached");
        assertThat(page().locator(".projects > li").last())
                .containsText("No project gains from it · sells for 40");
        inspect("hold-backs");
    }

    private void hatch(Clutch clutch, String tag, Sex sex, String seen) {
        var holding = holding();
        Written.to(
                holding,
                "Hatched " + tag,
                tx -> {
                    var egg = new Clutches(tx).theClutch(clutch.id()).incubating().getFirst();
                    var genes = new Stock(holding).genes(seen);
                    var hatched =
                            new Eggs(tx)
                                    .hatch(
                                            egg.id(),
                                            Hatching.of(holding.today(), new Tag(tag))
                                                    .showing(genes, true),
                                            Questions.ALL_THE_SAME)
                                    .theSaved();
                    var animal = new Animals(tx).byTag(tag).orElseThrow();
                    new Animals(tx)
                            .update(animal.with(animal.particulars().withSex(sex)))
                            .theSaved();
                    return hatched;
                });
    }

    private void begin(String name, String goal) {
        visit("/projects/new");
        page().getByLabel("Name").fill(name);
        page().getByLabel("Goal").fill(goal);
        page().getByLabel("Worth of a clutch that is a step").fill("100");
        button("Save").click();
        assertThat(page().locator(".flash")).containsText("is saved");
    }

    private void look() {
        page().locator(".head button.main").click();
        assertThat(page().locator(".steps > li").first()).isVisible();
    }
}
