// The only list of topics; each is a table made in src/<topic>.cpp.
#include "core.hpp"

#define WORTMATH_TOPICS(each)                                                                                              \
    each(water) each(atmosphere) each(gravity) each(extract) each(hydrometer) each(balance) each(thermal) each(ethanol)    \
    each(attenuation) each(beer) each(labelling) each(refractometer) each(bitterness) each(hop) each(colour)               \
    each(carbonation) each(priming) each(package) each(dispense) each(room) each(kettle) each(mash) each(steep)            \
    each(yeast) each(fermentation) each(liquor) each(cleaning)

namespace wortmath::core {

#define WORTMATH_DECLARE(name) extern const topic name##_topic;
WORTMATH_TOPICS(WORTMATH_DECLARE)
#undef WORTMATH_DECLARE

const topic* topics(std::size_t& count) noexcept {
#define WORTMATH_COPY(name) name##_topic,
    static const topic all[]{WORTMATH_TOPICS(WORTMATH_COPY)};
#undef WORTMATH_COPY
    count = sizeof all / sizeof *all;
    return all;
}

const entry* find(const char* path) noexcept {
    std::size_t count;
    const topic* const t = topics(count);
    for (std::size_t i = 0; i < count; ++i) {
        for (std::size_t k = 0; k < t[i].count; ++k) {
            const entry& e = t[i].entries[k];
            if (std::strcmp(e.path.full, path) == 0) return &e;
            // A family's path stands for its default.
            if (e.is_default && std::strncmp(e.path.full, path, e.path.family) == 0 && path[e.path.family] == '\0') return &e;
        }
    }
    return nullptr;
}

namespace {

bool same_family(const entry& a, const entry& b) noexcept {
    return a.path.family == b.path.family && std::strncmp(a.path.full, b.path.full, a.path.family) == 0;
}

sibling covering(const entry& e, int at, double value) noexcept {
    std::size_t count;
    const topic* const t = topics(count);
    for (std::size_t i = 0; i < count; ++i) {
        for (std::size_t k = 0; k < t[i].count; ++k) {
            const entry& o = t[i].entries[k];
            if (&o == &e || at >= o.arity || !same_family(o, e)) continue;
            const input_entry& in = o.inputs[at];
            if (in.of == e.inputs[at].of && in.range.valid_lo > -no_limit && in.range.validates(value)) return {o.path.full, in.range};
        }
    }
    return {};
}

}  // namespace

void describe_input(const entry& e, int input, double value, region where, range_error& error) noexcept {
    const input_entry& in = e.inputs[input];
    error.model = e.path.full;
    error.argument = in.name;
    error.value = value;
    error.range = in.range;
    error.where = where;
    detail::refusal_sentence(error, *in.of, where == region::unvalidated ? covering(e, input, value) : sibling{}, in.beyond_words);
}

void describe_joint(const entry& e, region where, range_error& error) noexcept {
    error.model = e.path.full;
    error.value = undefined;
    error.where = where;
    const char* const sentence = where == region::joint ? e.holds_when : e.refusal;
    std::snprintf(error.text, sizeof error.text, "%s: %s", e.path.full,
                  sentence ? sentence : "has no result for these inputs together");
}

bool diagnose(const entry& e, policy how, const double* const* in, std::size_t n, range_error& error) noexcept {
    int bad = -1;
    double bad_value = 0.0;
    for (int i = 0; i < e.arity; ++i) {
        const input_entry& a = e.inputs[i];
        std::size_t const count = a.what == detail::kind::list ? n : 1;
        for (std::size_t k = 0; k < count; ++k) {
            double const v = in[i][k];
            if (v != v) {
                if (is_absent(v) && a.what == detail::kind::optional_number) continue;
                if (!e.nan_is_impossible) continue;
            } else if (a.range.allows(v)) {
                if (!a.range.validates(v) && bad < 0) bad = i, bad_value = v;
                continue;
            }
            describe_input(e, i, v, region::impossible, error);
            return true;
        }
    }
    if (bad >= 0 && how != policy::extrapolate) {
        describe_input(e, bad, bad_value, region::unvalidated, error);
        return true;
    }
    return false;
}

}  // namespace wortmath::core
