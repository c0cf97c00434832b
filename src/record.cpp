// Every model's formula, run on the recording number type and printed. The one file that knows both.
#include "wortmath/record.hpp"

#include <algorithm>
#include <array>

#include "print/writer.hpp"
#include "wortmath/catalogue.hpp"

namespace wortmath::core {

namespace {

struct source {
    recording& into;
    const int* state;
    int elements;
    std::vector<std::vector<recorded>>& lists;

    template <class A>
    auto argument(int index) const {
        using a = detail::argument<A>;
        if constexpr (a::what == detail::kind::number) {
            return into.input(index);
        } else if constexpr (a::what == detail::kind::optional_number) {
            maybe<recorded> m;
            m.given = state[index] != 0;
            if (m.given) m.value = into.input(index);
            return m;
        } else if constexpr (a::what == detail::kind::list) {
            auto& list = lists.emplace_back();
            for (int i = 0; i < elements; ++i) list.push_back(into.element(index, i));
            return series<recorded>{list.data(), list.size()};
        } else {
            return static_cast<typename a::template in_formula<recorded>>(state[index]);
        }
    }
};

template <class M, class Arguments = typename M::signature::arguments>
struct record_of;

template <class M, class... A>
struct record_of<M, detail::types<A...>> {
    template <int... I>
    static std::vector<int> run_at(const source& from, std::integer_sequence<int, I...>) {
        auto const v = M::template formula<recorded>(from.argument<A>(I)...);
        if constexpr (requires { v.values; }) {
            std::vector<int> nodes;
            for (recorded const& x : v.values) nodes.push_back(x.node);
            return nodes;
        } else {
            return {v.node};
        }
    }
    static std::vector<int> run(recording& into, const int* state, int elements) {
        std::vector<std::vector<recorded>> lists;
        lists.reserve(sizeof...(A));
        return run_at({into, state, elements, lists}, std::make_integer_sequence<int, static_cast<int>(sizeof...(A))>{});
    }
};

template <class M>
constexpr recorder recorder_of() {
    recorder r{detail::path_of<M>.full, &record_of<M>::run, 0};
    if constexpr (requires { M::elements; }) r.elements = static_cast<int>(M::elements);
    return r;
}

template <class Family>
constexpr auto recorders_of_family() {
    constexpr typename Family::models all{};
    std::array<recorder, detail::member_count<typename Family::models>()> a{};
    std::size_t at = 0;
    detail::each_model(all, [&](auto const& m) { a[at++] = recorder_of<std::remove_cvref_t<decltype(m)>>(); });
    return a;
}

template <class... Family>
void append(std::vector<recorder>& all, family_list<Family...>) {
    auto add = [&](auto const& a) { all.insert(all.end(), a.begin(), a.end()); };
    (add(recorders_of_family<Family>()), ...);
}

std::vector<recorder> all_recorders() {
    std::vector<recorder> all;
    append(all, atmosphere::families), append(all, attenuation::families), append(all, balance::families), append(all, beer::families);
    append(all, bitterness::families), append(all, carbonation::families), append(all, cleaning::families), append(all, colour::families);
    append(all, dispense::families), append(all, ethanol::families), append(all, extract::families), append(all, fermentation::families);
    append(all, gravity::families), append(all, hop::families), append(all, hydrometer::families), append(all, kettle::families);
    append(all, labelling::families), append(all, liquor::families), append(all, mash::families), append(all, package::families);
    append(all, priming::families), append(all, refractometer::families), append(all, room::families), append(all, steep::families);
    append(all, thermal::families), append(all, water::families), append(all, yeast::families);
    std::sort(all.begin(), all.end(), [](const recorder& a, const recorder& b) { return std::strcmp(a.path, b.path) < 0; });
    return all;
}

}  // namespace

const recorder* find_recorder(const char* path) noexcept {
    static const std::vector<recorder> all = all_recorders();
    auto const at = std::lower_bound(all.begin(), all.end(), path, [](const recorder& a, const char* p) { return std::strcmp(a.path, p) < 0; });
    return at != all.end() && std::strcmp(at->path, path) == 0 ? &*at : nullptr;
}

std::string printed(const entry& e, style how, const states& chosen) { return print::writer(e, how, chosen).run(); }

}  // namespace wortmath::core
