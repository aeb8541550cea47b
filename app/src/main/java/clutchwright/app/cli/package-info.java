/// What every command shares. The front door is [clutchwright.app.cli.Terminal].
@org.jspecify.annotations.NullMarked
package clutchwright.app.cli;
