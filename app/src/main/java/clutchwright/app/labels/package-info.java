/// The screen Labels: sheets of labels to print, and what a phone opens that reads one. The front
/// door is [clutchwright.app.labels.LabelsPage].
@org.jspecify.annotations.NullMarked
package clutchwright.app.labels;
