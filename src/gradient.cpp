#include "gradient.hpp"

#include <array>
#include <cstring>

#include "wortmath/catalogue.hpp"
#include "wortmath/sensitivity.hpp"

namespace wortmath::core {
namespace {

template <class M>
constexpr slope_entry entry_of() {
    using S = detail::slopes<M>;
    if constexpr (detail::answers_always<M>) return {detail::path_of<M>.full, nullptr, 0};
    else return {detail::path_of<M>.full, &S::at, sizeof(typename S::T)};
}

template <class... F>
constexpr auto entries_of(family_list<F...>) {
    std::array<slope_entry, (detail::member_count<typename F::models>() + ... + 0)> all{};
    std::size_t at = 0;
    auto family = [&](auto const& models) { detail::each_model(models, [&](auto const& m) { all[at++] = entry_of<std::remove_cvref_t<decltype(m)>>(); }); };
    (family(typename F::models{}), ...);
    return all;
}

template <class Families>
constexpr auto table = entries_of(Families{});

template <class Families>
const slope_entry* in_topic(const char* path) noexcept {
    for (const slope_entry& e : table<std::remove_cv_t<Families>>)
        if (std::strcmp(e.path, path) == 0) return e.at ? &e : nullptr;
    return nullptr;
}

}  // namespace

const slope_entry* slopes_of(const char* path) noexcept {
    const char* const dot = std::strchr(path, '.');
    if (!dot) return nullptr;
    auto const length = static_cast<std::size_t>(dot - path);
    // clang-format off
#define WORTMATH_SLOPES(topic) \
    if (length == sizeof(#topic) - 1 && std::strncmp(path, #topic, length) == 0) return in_topic<decltype(wortmath::topic::families)>(path);
    WORTMATH_SLOPES(atmosphere) WORTMATH_SLOPES(attenuation) WORTMATH_SLOPES(balance) WORTMATH_SLOPES(beer) WORTMATH_SLOPES(bitterness)
    WORTMATH_SLOPES(carbonation) WORTMATH_SLOPES(cleaning) WORTMATH_SLOPES(colour) WORTMATH_SLOPES(dispense) WORTMATH_SLOPES(ethanol)
    WORTMATH_SLOPES(extract) WORTMATH_SLOPES(fermentation) WORTMATH_SLOPES(gravity) WORTMATH_SLOPES(hop) WORTMATH_SLOPES(hydrometer)
    WORTMATH_SLOPES(kettle) WORTMATH_SLOPES(labelling) WORTMATH_SLOPES(liquor) WORTMATH_SLOPES(mash) WORTMATH_SLOPES(package)
    WORTMATH_SLOPES(priming) WORTMATH_SLOPES(refractometer) WORTMATH_SLOPES(room) WORTMATH_SLOPES(steep) WORTMATH_SLOPES(thermal)
    WORTMATH_SLOPES(water) WORTMATH_SLOPES(yeast)
#undef WORTMATH_SLOPES
    // clang-format on
    return nullptr;
}

}  // namespace wortmath::core
