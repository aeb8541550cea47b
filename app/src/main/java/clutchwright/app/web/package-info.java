/// What every page shares: frame, forms, replies, sign-in. The front door is
/// [clutchwright.app.web.Reply].
///
/// ```
/// Reply = Show(View, status) | Go(path, Flash?)
/// View  = template, title, section, and whatever its template shows
/// Entry = Understood(value) | Faulty(Form)
/// ```
@org.jspecify.annotations.NullMarked
package clutchwright.app.web;
