// The state of a batch at one moment, in masses, and the calls of catalogue models on it.
#pragma once

#include <array>
#include <cstdio>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "wortmath/batch/batch.hpp"
#include "wortmath/model.hpp"

namespace wortmath::batch {

// Balling's fermentation: 2.0665 g of extract give 1 g of ethanol, 0.9565 g of CO2 and 0.11 g of yeast.
inline constexpr double balling_extract = 2.0665, balling_co2 = 0.9565, balling_yeast = 0.11, balling_rest = 1.0665;
inline constexpr double co2_g_per_volume = 1.9768;  // g/L of one volume of real gas

inline constexpr std::array<std::string_view, 9> utilisation_names{"tinseth", "rager", "rager_table", "daniels_whole", "daniels_pellet", "mosher", "garetz_1993", "garetz_1994", "tutzauer"};

template <class T>
struct hop_load {
    std::size_t addition = 0;  // index into the list of additions
    T bitterness{};            // mg
    std::array<T, utilisation_names.size()> by_model{};
};

// Contents of a vessel, in grams.
template <class T>
struct wort {
    T water{}, malt{}, sugar{}, ethanol{}, co2{}, priming{};
    T colour{};         // g degL
    T malt_at_pitch{};
    T temperature{};    // degC
    std::vector<hop_load<T>> hops;

    T mass() const { return water + malt + sugar + ethanol; }
    T extract() const { return malt + sugar; }
    T plato() const { return 100.0 * extract() / mass(); }
    T alcohol() const { return 100.0 * ethanol / mass(); }  // % mass
    bool empty() const { return !(number(mass()) > 0.0); }
    bool fermented() const { return number(ethanol) > 0.0; }

    void keep(T share) {
        for (T* x : {&water, &malt, &sugar, &ethanol, &co2, &priming, &colour, &malt_at_pitch}) *x = *x * share;
        for (auto& h : hops) {
            h.bitterness = h.bitterness * share;
            for (T& b : h.by_model) b = b * share;
        }
    }
    // All but the temperature, which the caller mixes.
    void add(const wort& other) {
        water = water + other.water, malt = malt + other.malt, sugar = sugar + other.sugar, ethanol = ethanol + other.ethanol;
        co2 = co2 + other.co2, priming = priming + other.priming, colour = colour + other.colour, malt_at_pitch = malt_at_pitch + other.malt_at_pitch;
        hops.insert(hops.end(), other.hops.begin(), other.hops.end());
    }
};

// A model was asked for something it cannot give; says where in the file.
class refused : public std::exception {
public:
    std::string text;
    explicit refused(std::string s) : text(std::move(s)) {}
    const char* what() const noexcept override { return text.c_str(); }
};

template <class T>
struct outside {
    std::optional<int> step;
    std::string model, argument;
    T value{};
    double distance = 0.0;
};

// How a number type puts a model's formula to work; one that knows a shorter way than through the formula says so here.
template <class T>
struct evaluation {
    template <class M, class... P>
    static auto of(const P&... p) {
        return M::template formula<T>(p...);
    }
};

// Calls models on any number type. A watched call outside the validated range is written down, impossible input is
// an exception of the type `refused`.
template <class T>
class caller {
public:
    std::optional<int> step;  // nothing: before the first step, or results
    bool watching = true;
    std::string_view unwatched_argument;
    std::vector<outside<T>> found;

    template <class M, class... G>
    auto operator()(const M&, G... given) {
        return filled<M>(typename M::signature::arguments{}, std::make_index_sequence<M::signature::arity - sizeof...(G)>{}, given...);
    }

    // Writes down a value outside the validated range, the one furthest outside of each step, model and argument.
    template <class M>
    void note(const M&, std::string_view argument, const T& x, const limits& r) {
        double const v = number(x);
        if (!watching || r.validates(v)) return;
        double const distance = v < r.valid_lo ? r.valid_lo - v : v - r.valid_hi;
        for (auto& o : found) {
            if (o.step == step && o.model == wortmath::detail::path_of<M>.full && o.argument == argument) {
                if (distance > o.distance) o.value = x, o.distance = distance;
                return;
            }
        }
        found.push_back({step, wortmath::detail::path_of<M>.full, std::string(argument), x, distance});
    }

private:
    template <class A>
    static auto default_of(const input& in) {
        using a = wortmath::detail::argument<A>;
        if constexpr (a::what == wortmath::detail::kind::number) return T(in.fallback);
        else if constexpr (a::what == wortmath::detail::kind::optional_number) return maybe<T>{T(in.fallback), !in.optional_none};
        else return static_cast<typename a::template in_formula<T>>(static_cast<int>(in.fallback));
    }
    template <class M, class... A, std::size_t... I, class... G>
    auto filled(wortmath::detail::types<A...>, std::index_sequence<I...>, G... given) {
        using all = std::tuple<A...>;
        return checked<M>(given..., default_of<std::tuple_element_t<sizeof...(G) + I, all>>(M::inputs[sizeof...(G) + I])...);
    }
    template <class M, class... P>
    auto checked(P... p) {
        std::size_t i = 0;
        (look<M>(i++, p), ...);
        auto const value = evaluation<T>::template of<M>(p...);
        if constexpr (wortmath::detail::has_refusal<M>) {
            bool nan;
            if constexpr (requires { value[0]; }) nan = number(value[0]) != number(value[0]);
            else nan = number(value) != number(value);
            if (nan) throw refused(std::string(wortmath::detail::path_of<M>.full) + ": " + M::refusal);
        }
        return value;
    }
    template <class M>
    void look(std::size_t i, const T& x) {
        double const v = number(x);
        limits const& r = wortmath::detail::limits_of<M>.of[i];
        if (r.validates(v) && v == v) return;
        if (!r.allows(v) || v != v) {
            range_error e;
            e.model = wortmath::detail::path_of<M>.full, e.argument = M::inputs[i].name, e.value = v, e.range = r, e.where = region::impossible;
            wortmath::detail::refusal_sentence(e, *M::signature::scales[i], {}, M::inputs[i].beyond_words);
            throw refused(e.text);
        }
        if (unwatched_argument != M::inputs[i].name) note(M{}, M::inputs[i].name, x, r);
    }
    template <class M>
    void look(std::size_t i, const series<T>& list) {
        for (T const& x : list) look<M>(i, x);
    }
    template <class M>
    void look(std::size_t i, const maybe<T>& m) {
        if (m.given) look<M>(i, m.value);
    }
    template <class M, class W>
        requires(__is_enum(W) || __is_same(W, bool))
    void look(std::size_t, W) {}
};

// The last part of a model's path: the name it has within its family.
template <class M>
constexpr std::string_view name_of_model(const M&) {
    auto const& p = wortmath::detail::path_of<M>;
    return std::string_view(p.full).substr(p.family + 1);
}

// Visits the model of a family with this name; false: there is none.
template <class Family, class Visit>
bool with_model(const Family& f, std::string_view name, Visit visit) {
    bool found = false;
    wortmath::detail::each_model(static_cast<const typename Family::models&>(f), [&](auto const& m) {
        if (!found && name_of_model(m) == name) found = true, visit(m);
    });
    return found;
}

}  // namespace wortmath::batch
