package clutchwright.app.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.env.Environment;
import org.springframework.http.CacheControl;
import org.springframework.web.method.support.HandlerMethodArgumentResolver;
import org.springframework.web.method.support.HandlerMethodReturnValueHandler;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.ResourceHandlerRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/// How pages are found, read and drawn.
@Configuration(proxyBeanMethods = false)
class WebSetup {

    /// Names by which this machine is called at home, besides `localhost`.
    static final String HOME_NAMES = "clutchwright.home-names";

    @Bean
    Clock clock() {
        return Clock.system(ZoneId.systemDefault());
    }

    @Bean
    Visitors visitors(Environment environment) {
        var names = environment.getProperty(HOME_NAMES, String[].class, new String[0]);
        return new Visitors(Set.of(names));
    }

    @Bean
    TemplateEngine templates() {
        return TemplateEngine.createPrecompiled(ContentType.Html);
    }

    @Bean
    Assets assets() {
        return Assets.read(
                "clutchwright.css",
                "parts.css",
                "proofs.css",
                "collection.css",
                "catalogue.css",
                "clutchwright.js",
                "eggs.css",
                "plan.css",
                "projects.css",
                "eggs.js",
                "icon.svg",
                "labels.css",
                "vendor/htmx-2.0.10.min.js",
                "season.css",
                "settings.css",
                "today.css",
                "waiting.js",
                "waiting-forms.js",
                "waiting-strip.js",
                "season.js");
    }

    @Bean
    Frames frames(
            Preferring preferring,
            Figures figures,
            Entering entering,
            Assets assets,
            ObjectProvider<RequestMappingHandlerMapping> mappings) {
        return new Frames(preferring, figures, entering, assets, () -> paths(mappings));
    }

    @Bean
    ReplyWriter replyWriter(TemplateEngine templates, Frames frames) {
        return new ReplyWriter(templates, frames);
    }

    @Bean
    EnteredBefore enteredBefore(Entering entering, ReplyWriter replies) {
        return new EnteredBefore(entering, replies);
    }

    @Bean
    EntryFilter entryFilter(Entering entering, EnteredBefore before) {
        return new EntryFilter(entering, before);
    }

    @Bean
    WebMvcConfigurer pages(ReplyWriter replies, EnteredBefore before) {
        return new Pages(replies, before);
    }

    private static Set<String> paths(ObjectProvider<RequestMappingHandlerMapping> mappings) {
        var paths = new HashSet<String>();
        mappings.forEach(
                mapping ->
                        mapping.getHandlerMethods().keySet().stream()
                                .map(RequestMappingInfo::getDirectPaths)
                                .forEach(paths::addAll));
        return paths;
    }

    private record Pages(ReplyWriter replies, EnteredBefore before) implements WebMvcConfigurer {

        @Override
        public void addInterceptors(InterceptorRegistry registry) {
            registry.addInterceptor(before);
        }

        @Override
        public void addArgumentResolvers(List<HandlerMethodArgumentResolver> resolvers) {
            resolvers.add(new FormParameter());
        }

        @Override
        public void addReturnValueHandlers(List<HandlerMethodReturnValueHandler> handlers) {
            handlers.add(replies);
        }

        @Override
        public void addResourceHandlers(ResourceHandlerRegistry registry) {
            keep(registry, "/*.css", "");
            keep(registry, "/*.js", "");
            keep(registry, "/*.svg", "");
            keep(registry, "/fonts/*", "fonts/");
            keep(registry, "/vendor/*", "vendor/");
        }

        /// Pages address these by a mark of their content, so browsers may keep them for good.
        private static void keep(ResourceHandlerRegistry registry, String pattern, String folder) {
            registry.addResourceHandler(pattern)
                    .addResourceLocations("classpath:/static/" + folder)
                    .setCacheControl(CacheControl.maxAge(Duration.ofDays(365)).cachePublic());
        }
    }
}
