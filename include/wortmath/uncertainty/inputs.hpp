// What is known about the inputs of a measurement model. A copy of an input is the same input: whatever it does to a
// result it does once. Two made separately are independent, even with equal numbers. Readings of one instrument share
// its offset and its scale error.
#pragma once

#include <array>
#include <atomic>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include <Eigen/Dense>

#include "wortmath/uncertainty/type_a.hpp"
#include "wortmath/uncertainty/type_b.hpp"

namespace wortmath::uncertainty {

using vector = Eigen::VectorXd;
using matrix = Eigen::MatrixXd;

namespace detail {
inline std::uint64_t new_identity() {
    static std::atomic<std::uint64_t> last{0};
    return ++last;
}
}  // namespace detail

class instrument;

class input {
public:
    double value = 0.0, uncertainty = 0.0, dof = detail::infinite;
    std::string shape, name;

    input(double value, double uncertainty = 0.0, double dof = detail::infinite, std::string name = "")
        : input(value, uncertainty, dof, uncertainty == 0.0 ? "exact" : "normal", std::move(name), 0.0, 0.0) {}

    static input rectangular(double value, double limit, std::string name = "") { return {value, type_b::rectangular(limit), detail::infinite, "rectangular", std::move(name), limit, 0.0}; }
    static input triangular(double value, double limit, std::string name = "") { return {value, type_b::triangular(limit), detail::infinite, "triangular", std::move(name), limit, 0.0}; }
    static input arcsine(double value, double limit, std::string name = "") { return {value, type_b::arcsine(limit), detail::infinite, "arcsine", std::move(name), limit, 0.0}; }
    static input trapezoidal(double value, double limit, double top_ratio, std::string name = "") {
        return {value, type_b::trapezoidal(limit, top_ratio), detail::infinite, "trapezoidal", std::move(name), limit, top_ratio};
    }
    static input curvilinear_trapezoid(double value, double limit, double limit_tolerance, std::string name = "") {
        return {value, type_b::curvilinear_trapezoid(limit, limit_tolerance), detail::infinite, "curvilinear_trapezoid", std::move(name), limit, limit_tolerance};
    }
    static input expanded(double value, double expanded, double coverage_factor = 2.0, double dof = detail::infinite, std::string name = "") {
        return {value, type_b::expanded(expanded, coverage_factor), dof, "expanded", std::move(name), 0.0, 0.0};
    }
    static input resolution(double value, double step, std::string name = "") { return {value, type_b::resolution(step), detail::infinite, "resolution", std::move(name), 0.5 * step, 0.0}; }
    static input critical_difference(double value, double critical_difference, std::string name = "") {
        return {value, type_b::critical_difference(critical_difference), detail::infinite, "critical_difference", std::move(name), 0.0, 0.0};
    }
    static input log_normal(double value, double factor, std::string name = "") {
        return {value, type_b::log_normal(value, factor), detail::infinite, "log_normal", std::move(name), type_b::log_normal_spread(factor), 0.0};
    }
    static input readings(std::span<const double> readings, std::string name = "") {
        auto const m = type_a::mean(readings);
        return {m.mean, m.uncertainty, m.dof, "readings", std::move(name), 0.0, 0.0};
    }

    std::uint64_t identity() const { return identity_; }
    bool same_as(const input& other) const { return identity_ == other.identity_; }
    double first_parameter() const { return a_; }
    double second_parameter() const { return b_; }

    // Behind a reading of an instrument.
    struct shared_errors {
        std::uint64_t identity = 0;
        std::string name;
        double reading = 0.0, offset = 0.0, scale = 0.0;
    };
    const std::optional<shared_errors>& of_instrument() const { return instrument_; }

private:
    friend class instrument;
    double a_ = 0.0, b_ = 0.0;
    std::uint64_t identity_ = 0;
    std::optional<shared_errors> instrument_;

    input(double v, double u, double n, std::string kind, std::string called, double a, double b)
        : value(v), uncertainty(u), dof(n), shape(std::move(kind)), name(std::move(called)), a_(a), b_(b), identity_(detail::new_identity()) {
        detail::check_finite(v, "the value of an input");
        detail::check_not_negative(u, "the uncertainty");
        detail::check_dof(n);
    }
};

class instrument {
public:
    double reading_uncertainty, offset_uncertainty, scale_uncertainty;
    std::string name;

    explicit instrument(double reading_uncertainty, double offset_uncertainty = 0.0, double scale_uncertainty = 0.0, std::string name = "")
        : reading_uncertainty(reading_uncertainty), offset_uncertainty(offset_uncertainty), scale_uncertainty(scale_uncertainty), name(std::move(name)), identity_(detail::new_identity()) {
        detail::check_not_negative(reading_uncertainty, "the uncertainty of a reading");
        detail::check_not_negative(offset_uncertainty, "the uncertainty of the offset");
        detail::check_not_negative(scale_uncertainty, "the uncertainty of the scale");
    }

    struct preset_values {
        std::string_view name;
        double reading, offset, scale;
        std::string_view unit;
    };
    // Proposals until the user enters better ones: the offset from the error limits in print, the reading one division
    // over sqrt(12), for marks a level read to 2 mm in a kettle 0.25 m wide. Derived; in the unit of the bare number.
    static constexpr std::array<preset_values, 9> presets{{{"fine_hydrometer", 0.00015, 0.0003, 0.0, "SG"},
                                                           {"hydrometer", 0.0003, 0.0006, 0.0, "SG"},
                                                           {"household_hydrometer", 0.0005, 0.0012, 0.0, "SG"},
                                                           {"thermometer", 0.2, 0.2, 0.0, "degC"},
                                                           {"kitchen_thermometer", 0.3, 0.6, 0.0, "degC"},
                                                           {"volume_marks", 0.1, 0.0, 0.012, "L"},
                                                           {"hand_refractometer", 0.06, 0.12, 0.0, "degBx"},
                                                           {"litre_cylinder", 0.003, 0.006, 0.0, "L"},
                                                           {"weighed_volume_marks", 0.1, 0.0, 0.005, "L"}}};
    static instrument preset(std::string_view name) {
        std::string known;
        for (auto const& p : presets) {
            if (p.name == name) return instrument(p.reading, p.offset, p.scale, std::string(name));
            known += (known.empty() ? "" : ", ") + std::string(p.name);
        }
        throw error("there is no instrument \"" + std::string(name) + "\"; known: " + known);
    }

    input read(double value, std::string called = "") const {
        double const s = value * scale_uncertainty;
        input one(value, std::sqrt(reading_uncertainty * reading_uncertainty + offset_uncertainty * offset_uncertainty + s * s), detail::infinite, "read", std::move(called), 0.0, 0.0);
        one.instrument_ = input::shared_errors{identity_, name, reading_uncertainty, offset_uncertainty, scale_uncertainty};
        return one;
    }

private:
    std::uint64_t identity_;
};

namespace detail {

// A correlation matrix that could be one.
inline void check_correlations(const matrix& r, Eigen::Index n) {
    if (r.rows() != n || r.cols() != n)
        throw error("the correlation matrix is " + std::to_string(r.rows()) + " by " + std::to_string(r.cols()) + "; with " + std::to_string(n) + " inputs it has " + std::to_string(n) + " rows and columns");
    for (Eigen::Index i = 0; i < n; ++i) {
        if (!(std::abs(r(i, i) - 1.0) <= 1e-12)) throw error("entry " + std::to_string(i + 1) + " on the diagonal of the correlation matrix is " + text_of(r(i, i)) + "; an input correlates with itself by 1");
        for (Eigen::Index k = 0; k < i; ++k)
            if (!(std::abs(r(i, k) - r(k, i)) <= 1e-12)) throw error("the correlation matrix is not symmetric: " + text_of(r(i, k)) + " and " + text_of(r(k, i)) + " for inputs " + std::to_string(k + 1) + " and " + std::to_string(i + 1));
    }
    if (n == 0) return;
    double const least = Eigen::SelfAdjointEigenSolver<matrix>(r, Eigen::EigenvaluesOnly).eigenvalues().minCoeff();
    if (!(least >= -1e-9)) throw error("no quantities can have these correlations: the matrix has the negative eigenvalue " + text_of(least));
}
inline bool is_identity(const matrix& r) { return (r - matrix::Identity(r.rows(), r.cols())).cwiseAbs().maxCoeff() == 0.0; }

}  // namespace detail

// The independent errors behind a list of inputs, one line of a budget each, and how they move the arguments.
class error_lines {
public:
    enum class kind { input, reading, offset, scale };
    struct line {
        std::string name;
        double uncertainty, dof;
        kind of;
        input from;  // the first input that brought this line
    };
    std::vector<line> lines;
    vector values;    // of the arguments
    matrix effects;   // arguments by lines
    std::optional<matrix> correlations;  // lines by lines, if other than the identity

    explicit error_lines(const std::vector<input>& inputs, const std::optional<matrix>& given = std::nullopt) {
        auto const n = static_cast<Eigen::Index>(inputs.size());
        values.resize(n);
        std::vector<std::array<Eigen::Index, 3>> of(inputs.size(), {-1, -1, -1});
        std::map<std::uint64_t, Eigen::Index> known;  // input: its line; instrument: its offset, the scale follows
        std::map<std::uint64_t, int> uses;
        std::vector<std::uint64_t> unnamed;
        for (std::size_t i = 0; i < inputs.size(); ++i) {
            input const& x = inputs[i];
            values[static_cast<Eigen::Index>(i)] = x.value;
            ++uses[x.identity()];
            std::string const called = x.name.empty() ? "x" + std::to_string(i + 1) : x.name;
            if (auto const [at, fresh] = known.try_emplace(x.identity(), static_cast<Eigen::Index>(lines.size())); fresh) {
                bool const read = x.of_instrument().has_value();
                lines.push_back({called, read ? x.of_instrument()->reading : x.uncertainty, x.dof, read ? kind::reading : kind::input, x});
                of[i][0] = at->second;
            } else of[i][0] = at->second;
            if (auto const& e = x.of_instrument()) {
                if (auto const [at, fresh] = known.try_emplace(e->identity, static_cast<Eigen::Index>(lines.size())); fresh) {
                    std::string its = e->name;
                    if (its.empty()) unnamed.push_back(e->identity), its = "instrument" + (unnamed.size() > 1 ? " " + std::to_string(unnamed.size()) : std::string());
                    lines.push_back({its + " offset", e->offset, detail::infinite, kind::offset, x});
                    lines.push_back({its + " scale", e->scale, detail::infinite, kind::scale, x});
                }
                of[i][1] = known[e->identity], of[i][2] = of[i][1] + 1;
            }
        }
        auto const m = static_cast<Eigen::Index>(lines.size());
        effects = matrix::Zero(n, m);
        for (std::size_t i = 0; i < inputs.size(); ++i) {
            auto const row = static_cast<Eigen::Index>(i);
            effects(row, of[i][0]) += 1.0;
            if (of[i][1] >= 0) effects(row, of[i][1]) += 1.0, effects(row, of[i][2]) += inputs[i].value;
        }
        if (!given) return;
        detail::check_correlations(*given, n);
        if (detail::is_identity(*given)) return;
        matrix r = matrix::Identity(m, m);
        for (Eigen::Index i = 0; i < n; ++i)
            for (Eigen::Index k = 0; k < n; ++k) {
                if (i == k || (*given)(i, k) == 0.0) continue;
                for (Eigen::Index const one : {i, k}) {
                    input const& x = inputs[static_cast<std::size_t>(one)];
                    if (x.of_instrument() || uses[x.identity()] > 1)
                        throw error("input " + std::to_string(one + 1) + " is " + (x.of_instrument() ? "a reading of an instrument" : "used twice") + " and has a correlation in the matrix too; give one of the two");
                }
                r(of[static_cast<std::size_t>(i)][0], of[static_cast<std::size_t>(k)][0]) = (*given)(i, k);
            }
        correlations = std::move(r);
    }
    vector uncertainties() const {
        vector u(static_cast<Eigen::Index>(lines.size()));
        for (std::size_t i = 0; i < lines.size(); ++i) u[static_cast<Eigen::Index>(i)] = lines[i].uncertainty;
        return u;
    }
    // Of the arguments.
    matrix covariance() const {
        vector const u = uncertainties();
        matrix const inner = correlations ? matrix(u.asDiagonal() * *correlations * u.asDiagonal()) : matrix(u.cwiseAbs2().asDiagonal());
        return effects * inner * effects.transpose();
    }
};

}  // namespace wortmath::uncertainty
