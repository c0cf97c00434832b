// How the results of a batch move with the amounts of its file: exact derivatives, the forecast run on dual numbers.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "wortmath/batch/forecast.hpp"
#include "wortmath/dual.hpp"

namespace wortmath::batch {

// ---- the engine on dual numbers ---------------------------------------------------------------------------------------

// A model has few inputs and the batch may have many: inside, the formula carries the derivatives by its own inputs,
// and the chain rule at its boundary makes of them those by the amounts of the file. What does not move at all is
// computed on plain numbers.
template <std::size_t N>
struct evaluation<dual<N>> {
    template <class M, class... P>
    static auto of(const P&... p) {
        using V = decltype(M::template formula<dual<N>>(p...));
        constexpr std::size_t n = (counts<P> + ... + 0);
        constexpr bool lists = (is_list<P> || ... || false);
        if constexpr (lists) {
            return M::template formula<dual<N>>(p...);
        } else {
            if (!(moves(p) || ... || false)) return outside<V>(M::template formula<double>(still(p)...));
            if constexpr (n == 0 || n >= N) {
                return M::template formula<dual<N>>(p...);
            } else {
                std::size_t at = 0;
                auto const v = std::apply([](auto const&... a) { return M::template formula<dual<n>>(a...); },
                                          std::tuple<decltype(inside<n>(p, at))...>{inside<n>(p, at)...});
                const dual<N>* inputs[n]{};
                at = 0;
                (gather(p, inputs, at), ...);
                if constexpr (requires { v[0]; }) {
                    V r{};
                    for (std::size_t k = 0; k < sizeof(r.values) / sizeof(r.values[0]); ++k) r.values[k] = chained(v[k], inputs);
                    return r;
                } else {
                    return chained(v, inputs);
                }
            }
        }
    }

private:
    template <class P>
    static constexpr std::size_t counts = __is_same(P, dual<N>) || __is_same(P, maybe<dual<N>>) ? 1 : 0;
    template <class P>
    static constexpr bool is_list = __is_same(P, series<dual<N>>);

    static bool moves(const dual<N>& x) {
        for (double d : x.by)
            if (d != 0.0) return true;
        return false;
    }
    static bool moves(const maybe<dual<N>>& x) { return x.given && moves(x.value); }
    template <class W>
    static bool moves(const W&) { return false; }

    static double still(const dual<N>& x) { return x.value; }
    static maybe<double> still(const maybe<dual<N>>& x) { return {x.value.value, x.given}; }
    template <class W>
    static W still(const W& w) { return w; }

    template <class V, class U>
    static V outside(const U& v) {
        if constexpr (requires { v[0]; }) {
            V r{};
            for (std::size_t k = 0; k < sizeof(r.values) / sizeof(r.values[0]); ++k) r.values[k] = dual<N>(v[k]);
            return r;
        } else {
            return V(v);
        }
    }

    template <std::size_t n>
    static dual<n> inside(const dual<N>& x, std::size_t& at) { return dual<n>::input(x.value, at++); }
    template <std::size_t n>
    static maybe<dual<n>> inside(const maybe<dual<N>>& x, std::size_t& at) { return {dual<n>::input(x.value.value, at++), x.given}; }
    template <std::size_t n, class W>
    static W inside(const W& w, std::size_t&) { return w; }

    template <std::size_t n>
    static void gather(const dual<N>& x, const dual<N>* (&inputs)[n], std::size_t& at) { inputs[at++] = &x; }
    template <std::size_t n>
    static void gather(const maybe<dual<N>>& x, const dual<N>* (&inputs)[n], std::size_t& at) { inputs[at++] = x.given ? &x.value : nullptr; }
    template <class W, std::size_t n>
    static void gather(const W&, const dual<N>* (&)[n], std::size_t&) {}

    template <std::size_t n>
    static dual<N> chained(const dual<n>& v, const dual<N>* const (&inputs)[n]) {
        dual<N> r(v.value);
        for (std::size_t k = 0; k < n; ++k) {
            if (!inputs[k] || v.by[k] == 0.0) continue;
            for (std::size_t i = 0; i < N; ++i)
                if (inputs[k]->by[i] != 0.0) r.by[i] += v.by[k] * inputs[k]->by[i];
        }
        return r;
    }
};

// ---- amounts and results by their names -------------------------------------------------------------------------------

// An amount of the file: where it stands, whose it is, and what it is.
template <class T>
struct named_amount {
    where at;
    std::string list;        // "hops", "grains", ...; empty for a key of the step itself
    std::size_t item = 0;    // index in that list
    std::size_t element = 0; // index of a number in a list of numbers (range)
    std::string ingredient;  // its name, if it has one
    amount<T>* is = nullptr;
};

namespace detail {
template <class T>
struct amount_lister {
    std::vector<named_amount<T>>& all;
    named_amount<T> here;
    void operator()(std::string_view key, amount<T>& a) {
        named_amount<T> n = here;
        n.at.key = std::string(key);
        n.at.line = a.line;
        n.is = &a;
        all.push_back(std::move(n));
    }
    void operator()(std::string_view key, std::optional<amount<T>>& a) {
        if (a) (*this)(key, *a);
    }
    template <class I>
    void operator()(std::string_view key, std::vector<I>& list) {
        for (std::size_t i = 0; i < list.size(); ++i) {
            amount_lister inner{all, here};
            if constexpr (requires { list[i].value; }) {
                inner.here.element = i;
                inner(key, list[i]);
            } else {
                inner.here.list = std::string(key), inner.here.item = i;
                if constexpr (requires { list[i].name; }) {
                    if (list[i].name) inner.here.ingredient = *list[i].name;
                }
                I::each_key(inner, list[i]);
            }
        }
    }
    template <class Other>
    void operator()(std::string_view, Other&) {}
};
}  // namespace detail

// All amounts of a batch, defaults too, in the order of the file's steps. The batch must outlive the list.
template <class T>
std::vector<named_amount<T>> amounts_of(batch<T>& b) {
    std::vector<named_amount<T>> all;
    detail::amount_lister<T> v{all, {}};
    v.here.at = {b.line, 0, {}, {}, "batch"};
    v("altitude", b.altitude);
    v("barometer", b.barometer);
    v.here.at.table = "instruments";
    instruments_table<T>::each_key(v, b.instruments);
    for (auto& any : b.steps) {
        std::visit(
            [&](auto& s) {
                v.here.at = place_of(s);
                std::remove_cvref_t<decltype(s)>::each_key(v, s);
            },
            any);
    }
    return all;
}

// The single numbers among the results and of the package, under the keys of `card --json`.
template <class F, class Visit>
void each_result(F& f, Visit&& visit) {
    visit("original_gravity", f.original_gravity);
    visit("original_extract_degp", f.original_extract);
    visit("final_gravity", f.final_gravity);
    visit("apparent_attenuation", f.apparent_attenuation);
    visit("real_attenuation", f.real_attenuation);
    visit("alcohol_by_volume", f.alcohol_by_volume);
    visit("alcohol_by_volume_before_priming", f.alcohol_by_volume_before_priming);
    visit("alcohol_by_mass", f.alcohol_by_mass);
    visit("bitterness_bu", f.bitterness);
    visit("bitterness_ratio", f.bitterness_ratio);
    visit("colour_srm", f.colour);
    visit("colour_ebc", f.colour_ebc);
    visit("volume_packaged_l", f.volume_packaged);
    visit("cells_needed", f.cells_needed);
    visit("dry_yeast_g", f.dry_yeast);
    visit("energy_kj_per_l", f.energy);
    if (!f.package) return;
    visit("remainder_l", f.package->remainder);
    visit("residual_vol", f.package->residual);
    visit("carbonation_vol", f.package->carbonation);
    visit("priming_sugar_g", f.package->priming_sugar);
    visit("priming_alcohol_by_volume", f.package->priming_alcohol);
    visit("serving_pressure_bar", f.package->serving_pressure);
    visit("hottest_pressure_bar", f.package->hottest_pressure);
    visit("hazard_pressure_bar", f.package->hazard_pressure);
    visit("hazard_carbonation_vol", f.package->hazard_carbonation);
    visit("regulator_pressure_bar", f.package->regulator_pressure);
}
// All keys that each_result knows.
std::vector<std::string> result_keys();

template <class T>
figure<T> result_of(const forecast_result<T>& f, std::string_view key) {
    figure<T> found;
    each_result(f, [&](std::string_view k, const figure<T>& x) {
        if (k == key) found = x;
    });
    return found;
}

// ---- derivatives --------------------------------------------------------------------------------------------------------

// How one result moves with one amount: its change for one unit of the library (g, L, min, degC, share, ...).
struct derivative {
    where at;
    std::string ingredient;
    measure in = measure::number;
    double value = 0.0;  // of the amount
    double slope = 0.0;
    bool given = false;
};

// Results in the order of `keys`, and how each moves with each of the amounts, numbered as in amounts_of.
// A result that the file does not reach is nothing and does not move.
struct moved_results {
    std::vector<figure<double>> values;
    std::vector<std::vector<double>> slopes;  // [result][amount]
    std::vector<outside<double>> outside_range;
};
moved_results differentiate(const batch<double>& b, const std::vector<std::string>& keys, const std::vector<std::size_t>& amounts);

// One result by every amount of the file, defaults too.
std::vector<derivative> gradient(const batch<double>& b, std::string_view key);

}  // namespace wortmath::batch
