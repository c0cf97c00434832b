// What studies of a batch's spread and of its readings need from the engine.
#include <pybind11/numpy.h>
#include <pybind11/pybind11.h>
#include <pybind11/stl.h>

#include "wortmath/batch/read_uncertain.hpp"
#include "wortmath/batch/spread.hpp"

namespace py = pybind11;
namespace batch = wortmath::batch;

namespace {

using whole_batch = batch::batch<double>;

py::dict told(const batch::statement& s) {
    py::dict d;
    d["shape"] = s.shape, d["uncertainty"] = s.uncertainty, d["limit"] = s.limit, d["factor"] = s.factor, d["dof"] = s.dof, d["instrument"] = s.instrument, d["label"] = s.label;
    return d;
}

std::vector<batch::answer> asked(const std::vector<std::pair<int, std::string>>& list) {
    std::vector<batch::answer> all;
    for (auto const& [step, key] : list) all.push_back({step, key});
    return all;
}

}  // namespace

void add_spread(py::module_& parent) {
    py::module_ m = parent.def_submodule("_spread");
    m.def("as_brewed", [](const whole_batch& b) { return batch::as_brewed(b); });
    m.def("amounts", [](const whole_batch& b) {
        constexpr const char* measures[]{"g", "L", "min", "d", "degC", "bar", "m", "g/h", "L/h", "kW", "share", "SRM", "EBC", "SG", "degP", "vol", "g/L", "L/kg", "number"};
        py::list all;
        for (auto const& p : batch::amount_places(b)) {
            py::dict d;
            d["index"] = p.index, d["step"] = p.step, d["line"] = p.line, d["do"] = p.do_word, d["key"] = p.key, d["name"] = p.name, d["table"] = p.table, d["unit"] = p.unit;
            d["in"] = measures[static_cast<int>(p.in)], d["value"] = p.value, d["given"] = p.given;
            all.append(d);
        }
        return all;
    });
    m.def("uncertain", [](const std::string& text, const whole_batch& b) {
        py::list all;
        for (auto const& u : batch::read_uncertain(text, b)) {
            py::dict d;
            d["line"] = u.line, d["indices"] = u.indices, d["how"] = told(u.how);
            all.append(d);
        }
        return all;
    });
    m.def("readings", [](const std::string& text, const whole_batch& b) {
        py::list all;
        for (auto const& r : batch::read_readings(text, b)) {
            py::dict d;
            d["line"] = r.line, d["step"] = r.step, d["quantity"] = r.quantity, d["value"] = r.value, d["text"] = r.text, d["unit"] = r.unit, d["name"] = r.label;
            d["temperature"] = r.temperature ? py::object(py::float_(*r.temperature)) : py::none();
            d["how"] = r.how ? py::object(told(*r.how)) : py::none();
            all.append(d);
        }
        return all;
    });
    m.def("answer", [](const whole_batch& b, const std::vector<std::pair<int, std::string>>& which) {
        auto const f = batch::forecast(b);
        std::vector<double> y(which.size());
        for (std::size_t j = 0; j < which.size(); ++j)
            if (!batch::figure_of(f, {which[j].first, which[j].second}, y[j])) throw py::key_error("a forecast has no figure \"" + which[j].second + "\"" + (which[j].first ? " after step " + std::to_string(which[j].first) : std::string()));
        return y;
    });
    m.def(
        "brew_many",
        [](const whole_batch& b, const std::vector<std::size_t>& amounts, const std::vector<std::pair<int, std::string>>& which, const py::array_t<double, py::array::c_style | py::array::forcecast>& x, unsigned threads) {
            if (x.ndim() != 2 || x.shape(0) != static_cast<py::ssize_t>(amounts.size())) throw py::value_error("expected one row of values for each amount");
            std::size_t const total = batch::amount_places(b).size();
            for (auto const i : amounts)
                if (i >= total) throw py::index_error("the batch has no such amount");
            auto const answers = asked(which);
            auto const sets = static_cast<std::size_t>(x.shape(1));
            py::array_t<double> y({static_cast<py::ssize_t>(answers.size()), x.shape(1)});
            double const* const in = x.data();
            double* const out = y.mutable_data();
            {
                py::gil_scoped_release const release;
                batch::brew_many(b, amounts, answers, sets, [&](std::size_t i, std::size_t k) { return in[i * sets + k]; }, [&](std::size_t j, std::size_t k, double v) { out[j * sets + k] = v; }, threads);
            }
            return y;
        },
        py::arg("batch"), py::arg("amounts"), py::arg("answers"), py::arg("values"), py::arg("threads") = 1);
}
