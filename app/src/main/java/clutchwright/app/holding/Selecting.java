package clutchwright.app.holding;

import clutchwright.app.web.Form;
import clutchwright.engine.pedigree.AnimalId;
import java.util.List;

/// The animals that a set of filters lets through; the screen Collection answers, others ask.
public interface Selecting {

    /// In the order that the filters ask for.
    ///
    /// @param filters as they stand in the address of the list
    List<AnimalId> select(Form filters);
}
