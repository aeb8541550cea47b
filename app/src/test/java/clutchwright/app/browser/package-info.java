/// Pages in a real browser. The front door is [clutchwright.app.browser.Browsing].
@org.jspecify.annotations.NullMarked
package clutchwright.app.browser;
