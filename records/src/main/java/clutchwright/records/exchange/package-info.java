/// Collections in and out as files. The front door is
/// [clutchwright.records.exchange.ImportPlan].
///
/// How an import goes, and what a page that leads a keeper through it calls:
///
/// 1. [clutchwright.records.exchange.Tables#read] makes a `Sheet` of a file (CSV or XLSX), or says
///    why it is none.
/// 2. [clutchwright.records.exchange.ColumnMatching#propose] says what each column holds;
///    [clutchwright.records.exchange.RememberedMatchings] knows what the keeper chose for a file
///    with the same headings before. The keeper changes it by `matching.with(index, column)`.
/// 3. [clutchwright.records.exchange.ImportPlan#of] is the dry run. It changes nothing and has
///    everything a page shows: `problemsByColumn()`, `stops()`, `notes()`, `preview(n)`,
///    `count(fate)`, `canBeApplied()`. Each problem says where, what and which remedies there are;
///    a remedy that is a choice goes into `Choices`, and the plan is made again.
/// 4. `plan.apply(database, who, what, progress)` writes all of it or nothing.
///
/// [clutchwright.records.exchange.OpenPackage] writes the whole collection as a folder or a .zip
/// and reads it back. [clutchwright.records.exchange.PackageCollection] reads the same files
/// without any records, for commands that only answer a question about them.
///
/// ```
/// ImportPlan = PlannedRow(row, AnimalEntry, Fate)*, Problem*
/// Problem    = Where, Finding
/// Finding    = Stops (with remedies) | Note
/// ```
@NullMarked
package clutchwright.records.exchange;

import org.jspecify.annotations.NullMarked;
