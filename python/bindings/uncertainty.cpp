// Uncertainty and reconciliation for Python: inputs as objects, everything else as plain functions that the modules
// wortmath.uncertainty and wortmath.reconcile give their names.
#include <pybind11/eigen.h>
#include <pybind11/functional.h>
#include <pybind11/pybind11.h>
#include <pybind11/stl.h>

#include "wortmath/reconcile.hpp"
#include "wortmath/uncertainty.hpp"

namespace py = pybind11;
namespace un = wortmath::uncertainty;
namespace rec = wortmath::reconcile;

namespace {

using numbers = std::vector<double>;
using un::matrix;
using un::vector;
constexpr double inf = un::detail::infinite;

py::dict told(const un::budget_result& b) {
    py::dict d;
    d["uncertainty"] = b.uncertainty, d["components"] = b.components, d["shares"] = b.shares, d["cross_share"] = b.cross_share;
    if (!b.value) return d;
    d["value"] = *b.value, d["dof"] = *b.dof, d["names"] = b.names, d["sensitivities"] = b.sensitivities, d["uncertainties"] = b.uncertainties;
    return d;
}

py::dict told(rec::reconciled r) {
    py::dict d;
    d["values"] = std::move(r.values), d["uncertainties"] = std::move(r.uncertainties), d["objective"] = r.objective, d["dof"] = r.dof, d["probability"] = r.probability;
    d["z"] = std::move(r.z), d["critical_z"] = r.critical_z, d["balance_z"] = std::move(r.balance_z), d["bias"] = std::move(r.bias), d["detectable_bias"] = std::move(r.detectable_bias);
    d["unmeasured"] = std::move(r.unmeasured), d["unmeasured_uncertainties"] = std::move(r.unmeasured_uncertainties), d["covariance"] = std::move(r.covariance), d["log_determinant"] = r.log_determinant;
    return d;
}

// The model gets a list of floats.
un::measurement measured(py::function f) {
    return [f = std::move(f)](std::span<const double> x) { return f(numbers(x.begin(), x.end())).cast<double>(); };
}

std::string plain(double x) { return un::detail::text_of(x); }

}  // namespace

void add_uncertainty(py::module_& parent) {
    py::module_ m = parent.def_submodule("_uncertainty");

    py::class_<un::input>(m, "Input", "A value and what is known about it. A copy is the same input; two made separately are independent, even with equal numbers.")
        .def(py::init<double, double, double, std::string>(), py::arg("value"), py::arg("uncertainty") = 0.0, py::arg("dof") = inf, py::arg("name") = "")
        .def_static("rectangular", &un::input::rectangular, py::arg("value"), py::arg("limit"), py::arg("name") = "", "Within the limit either way, all values alike.")
        .def_static("triangular", &un::input::triangular, py::arg("value"), py::arg("limit"), py::arg("name") = "", "Within the limit, the middle likelier.")
        .def_static("arcsine", &un::input::arcsine, py::arg("value"), py::arg("limit"), py::arg("name") = "", "Swinging between the limits, as a thermostat does.")
        .def_static("trapezoidal", &un::input::trapezoidal, py::arg("value"), py::arg("limit"), py::arg("top_ratio"), py::arg("name") = "", "Within the limit; the top is a share of the base.")
        .def_static("curvilinear_trapezoid", &un::input::curvilinear_trapezoid, py::arg("value"), py::arg("limit"), py::arg("limit_tolerance"), py::arg("name") = "", "Within a limit that is itself known only to a tolerance.")
        .def_static("expanded", &un::input::expanded, py::arg("value"), py::arg("expanded"), py::arg("coverage_factor") = 2.0, py::arg("dof") = inf, py::arg("name") = "", "From a certificate: U with its factor k.")
        .def_static("resolution", &un::input::resolution, py::arg("value"), py::arg("step"), py::arg("name") = "", "Read from a display with this step.")
        .def_static("critical_difference", &un::input::critical_difference, py::arg("value"), py::arg("critical_difference"), py::arg("name") = "", "From the 95 % critical difference of two single results.")
        .def_static("log_normal", &un::input::log_normal, py::arg("value"), py::arg("factor"), py::arg("name") = "", "Right within a factor either way at 95 %; the value is the median.")
        .def_static("readings", [](const numbers& r, std::string name) { return un::input::readings(r, std::move(name)); }, py::arg("readings"), py::arg("name") = "", "The mean of repeated readings.")
        .def_readonly("value", &un::input::value)
        .def_readonly("uncertainty", &un::input::uncertainty)
        .def_readonly("dof", &un::input::dof)
        .def_readonly("shape", &un::input::shape)
        .def_readonly("name", &un::input::name)
        .def_property_readonly("_identity", &un::input::identity)
        .def_property_readonly("_instrument", [](const un::input& i) { return i.of_instrument() ? py::object(py::int_(i.of_instrument()->identity)) : py::none(); })
        .def("__copy__", [](const un::input& i) { return un::input(i); })
        .def("__deepcopy__", [](const un::input& i, const py::dict&) { return un::input(i); })
        .def("__repr__", [](const un::input& i) {
            std::string s = "Input(" + plain(i.value) + ", uncertainty=" + plain(i.uncertainty);
            if (i.dof < inf) s += ", dof=" + plain(i.dof);
            if (!i.name.empty()) s += ", name='" + i.name + "'";
            return s + "; " + i.shape + ")";
        });

    py::class_<un::instrument>(m, "Instrument", "The standard uncertainties of one instrument; its readings share offset and scale.")
        .def(py::init<double, double, double, std::string>(), py::arg("reading_uncertainty"), py::arg("offset_uncertainty") = 0.0, py::arg("scale_uncertainty") = 0.0, py::arg("name") = "")
        .def_static("preset", [](const std::string& name) { return un::instrument::preset(name); }, py::arg("name"))
        .def_static("_presets", [] {
            py::dict d;
            for (auto const& p : un::instrument::presets) d[py::str(std::string(p.name))] = py::make_tuple(p.reading, p.offset, p.scale, std::string(p.unit));
            return d;
        })
        .def_readonly("reading_uncertainty", &un::instrument::reading_uncertainty)
        .def_readonly("offset_uncertainty", &un::instrument::offset_uncertainty)
        .def_readonly("scale_uncertainty", &un::instrument::scale_uncertainty)
        .def_readonly("name", &un::instrument::name)
        .def("read", &un::instrument::read, py::arg("value"), py::arg("name") = "", "A reading of this instrument as an input.")
        .def("__copy__", [](const un::instrument& i) { return un::instrument(i); })
        .def("__deepcopy__", [](const un::instrument& i, const py::dict&) { return un::instrument(i); })
        .def("__repr__", [](const un::instrument& i) {
            return "Instrument(" + plain(i.reading_uncertainty) + ", offset_uncertainty=" + plain(i.offset_uncertainty) + ", scale_uncertainty=" + plain(i.scale_uncertainty) + (i.name.empty() ? "" : ", name='" + i.name + "'") + ")";
        });

    m.def("type_a_mean", [](const numbers& r) {
        auto const a = un::type_a::mean(r);
        return py::make_tuple(a.mean, a.uncertainty, a.dof);
    });
    m.def("rectangular", &un::type_b::rectangular);
    m.def("triangular", &un::type_b::triangular);
    m.def("arcsine", &un::type_b::arcsine);
    m.def("trapezoidal", &un::type_b::trapezoidal);
    m.def("curvilinear_trapezoid", &un::type_b::curvilinear_trapezoid);
    m.def("expanded", &un::type_b::expanded);
    m.def("resolution", &un::type_b::resolution);
    m.def("critical_difference", &un::type_b::critical_difference);
    m.def("log_normal", &un::type_b::log_normal);

    m.def("budget", [](const vector& c, const vector& u, const std::optional<matrix>& r) { return told(un::budget::first_order(c, u, r)); });
    m.def("budget_of_model", [](py::function f, const std::vector<un::input>& i, const std::optional<matrix>& r) { return told(un::budget::first_order(measured(std::move(f)), i, r)); });
    m.def("budget_of_derivatives", [](double value, const vector& by_argument, const std::vector<un::input>& i, const std::optional<matrix>& r) { return told(un::budget::first_order(value, by_argument, un::error_lines(i, r))); });
    m.def("second_order", [](const vector& c, const matrix& h, const matrix& t, const vector& u) {
        auto const s = un::budget::second_order(c, h, t, u);
        return py::make_tuple(s.uncertainty, s.bias, py::none());
    });
    m.def("second_order_of_model", [](py::function f, const std::vector<un::input>& i) {
        auto const s = un::budget::second_order(measured(std::move(f)), i);
        return py::make_tuple(s.uncertainty, s.bias, *s.value);
    });
    m.def("joint", [](const matrix& j, const matrix& v, double p) {
        auto const r = un::multivariate::first_order(j, v, p);
        return py::make_tuple(r.covariance, r.ellipsoid_factor);
    });
    m.def("sensitivities", [](py::function f, const std::vector<un::input>& inputs) {
        vector x(static_cast<Eigen::Index>(inputs.size())), u = x;
        for (std::size_t i = 0; i < inputs.size(); ++i) x[static_cast<Eigen::Index>(i)] = inputs[i].value, u[static_cast<Eigen::Index>(i)] = inputs[i].uncertainty;
        auto const model = measured(std::move(f));
        return py::make_tuple(un::detail::called(model, x), un::detail::sensitivities(model, x, u));
    });
    m.def("covariance_of", [](const std::vector<un::input>& i, const std::optional<matrix>& r) { return un::error_lines(i, r).covariance(); });
    m.def("welch_satterthwaite", [](const numbers& w, const numbers& n) { return un::dof::welch_satterthwaite(w, n); });
    m.def("student", &un::coverage_factor::student);
    m.def("shared_terms", [](const numbers& x, double r, double o, double s) { return un::covariance::shared_terms(x, r, o, s); });
    m.def("symmetric", [](const numbers& y, double p) {
        auto const i = un::interval::symmetric(y, p);
        return py::make_tuple(i.low, i.high);
    });
    m.def("shortest", [](const numbers& y, double p) {
        auto const i = un::interval::shortest(y, p);
        return py::make_tuple(i.low, i.high);
    });
    m.def("upper_with_refused", [](const numbers& y, double p) { return un::detail::upper_with_refused(y, p); });

    m.def("adaptive", [](const std::function<matrix(const matrix&)>& model, const std::vector<un::input>& inputs, const std::optional<matrix>& correlations, double probability, bool shortest, int digits, std::uint64_t seed, double most_trials) {
        un::monte_carlo_options const o{probability, shortest ? un::interval_kind::shortest : un::interval_kind::symmetric, digits, seed, most_trials};
        auto r = un::monte_carlo::adaptive(un::monte_carlo::block_model([&](const matrix& x) {
                                               if (PyErr_CheckSignals() != 0) throw py::error_already_set();
                                               return model(x);
                                           }),
                                           inputs, correlations, o);
        py::dict d;
        d["value"] = r.value, d["uncertainty"] = r.uncertainty, d["low"] = r.low, d["high"] = r.high, d["trials"] = r.trials, d["refused"] = r.refused;
        d["converged"] = r.converged, d["seed"] = r.seed, d["samples"] = std::move(r.samples);
        d["covariance"] = r.covariance ? py::cast(*r.covariance) : py::none();
        d["ellipsoid_factor"] = r.ellipsoid_factor ? py::object(py::float_(*r.ellipsoid_factor)) : py::none();
        return d;
    });
    m.def("draw", [](const std::vector<un::input>& inputs, const std::optional<matrix>& r, std::uint64_t seed, std::uint64_t block, long trials) { return un::sampler(inputs, r).draw(seed, block, trials); });

    m.def("linear", [](const vector& y, const matrix& v, const matrix& a, const vector& b, double error_rate, double detection_rate) { return told(rec::linear::least_squares(y, v, a, b, error_rate, detection_rate)); });
    m.def("nonlinear", [](const std::function<std::tuple<vector, matrix, matrix>(const vector&, const vector&)>& f, const vector& y, const matrix& v, const vector& guesses, double error_rate, double detection_rate) {
        return told(rec::nonlinear::least_squares_of(
            [&](const vector& x, const vector& z) {
                auto [values, by_x, by_z] = f(x, z);
                return rec::nonlinear::linearised{std::move(values), std::move(by_x), std::move(by_z)};
            },
            y, v, guesses, error_rate, detection_rate));
    });
    m.def("partial_boil", [](const vector& y, const vector& u, double error_rate, double detection_rate) { return told(rec::partial_boil::least_squares(y, u, error_rate, detection_rate)); });

    // Parts, for the tests of their tables.
    py::module_ p = m.def_submodule("parts");
    p.def("type_a_covariance_means", [](const numbers& x, const numbers& y) { return un::parts::type_a_covariance::means(x, y); });
    p.def("bias_second_order", &un::parts::bias::second_order);
    p.def("ellipsoid_factor", &un::parts::region::ellipsoid_factor);
    p.def("rectangle_side", &un::parts::region::rectangle_side);
    p.def("trials_minimum", &un::parts::trials::minimum);
    p.def("tolerance_numerical", &un::parts::tolerance::numerical);
    p.def("agreement_jcgm_101", [](std::pair<double, double> a, std::pair<double, double> b, double u, int digits) {
        auto const v = un::parts::agreement::jcgm_101({a.first, a.second}, {b.first, b.second}, u, digits);
        return py::make_tuple(v.confirmed, v.low_difference, v.high_difference, v.tolerance);
    });
    p.def("fit_line", [](const numbers& x, const numbers& y) {
        auto const l = un::parts::fit::line(x, y);
        return py::make_tuple(l.intercept, l.slope, l.intercept_uncertainty, l.slope_uncertainty, l.correlation, l.residual, l.dof);
    });
    p.def("weighted_mean", [](const numbers& x, const numbers& u) {
        auto const w = un::parts::weighted_mean::inverse_variance(x, u);
        return py::make_tuple(w.mean, w.uncertainty, w.birge_ratio);
    });
    p.def("chi_square", &rec::parts::global_test::chi_square);
    p.def("sidak", &rec::parts::critical_z::sidak);
}
