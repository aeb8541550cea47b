/// Tables as breeders keep them, read into rows of text. The front door is
/// [clutchwright.records.exchange.sheets.SheetFile].
///
/// Nothing here knows an animal: a file's bytes become a `Sheet`, or one `FileFault` that says why
/// they cannot. What was peculiar but readable (a formula, a short row) is a `SheetRemark`.
///
/// ```
/// SheetReading = Read(Sheet) | Unreadable(FileFault)
/// Sheet        = header, Row(number, cells)*, SheetRemark*
/// ```
@org.jspecify.annotations.NullMarked
package clutchwright.records.exchange.sheets;
