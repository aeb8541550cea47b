package clutchwright.app.web;

import java.util.LinkedHashMap;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.core.MethodParameter;
import org.springframework.web.bind.support.WebDataBinderFactory;
import org.springframework.web.context.request.NativeWebRequest;
import org.springframework.web.method.support.HandlerMethodArgumentResolver;
import org.springframework.web.method.support.ModelAndViewContainer;

/// Hands the posted fields, or the address's query, to a page as a [Form].
final class FormParameter implements HandlerMethodArgumentResolver {

    @Override
    public boolean supportsParameter(MethodParameter parameter) {
        return parameter.getParameterType() == Form.class;
    }

    @Override
    public Form resolveArgument(
            MethodParameter parameter,
            @Nullable ModelAndViewContainer container,
            NativeWebRequest request,
            @Nullable WebDataBinderFactory binders) {
        var values = new LinkedHashMap<String, List<String>>();
        request.getParameterMap().forEach((field, texts) -> values.put(field, List.of(texts)));
        return new Form(values, new LinkedHashMap<>());
    }
}
