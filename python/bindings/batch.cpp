// Batches as Python objects. Everything of a result is handed over as plain dicts and lists, in the shape of
// `wortmath card --json`, so that there is one shape to know.
#include <pybind11/pybind11.h>
#include <pybind11/stl.h>
#include <pybind11/stl/filesystem.h>

#include "wortmath/batch/cautions.hpp"
#include "wortmath/batch/forecast.hpp"
#include "wortmath/batch/read.hpp"

namespace py = pybind11;
namespace batch = wortmath::batch;

namespace {

using forecast = batch::forecast_result<double>;

py::object number(const std::optional<double>& x) { return x ? py::object(py::float_(*x)) : py::none(); }
py::object text(const std::optional<std::string>& s) { return s ? py::object(py::str(*s)) : py::none(); }
py::object step(const std::optional<int>& s) { return s ? py::object(py::int_(*s)) : py::none(); }
py::object whole(const std::optional<double>& x) { return x ? py::object(py::int_(static_cast<long long>(*x))) : py::none(); }

py::dict by_name(const batch::figures<double>& list) {
    py::dict d;
    for (auto const& [name, x] : list) d[py::str(name)] = name == "bottles" ? whole(x) : number(x);
    return d;
}
py::dict grams(const std::vector<std::pair<std::string, double>>& list) {
    py::dict d;
    for (auto const& [name, x] : list) d[py::str(name)] = x;
    return d;
}

py::dict state(const batch::state<double>& s) {
    py::dict d;
    d["mass_g"] = s.mass;
    d["water_g"] = s.water;
    d["malt_extract_g"] = s.malt_extract;
    d["sugar_extract_g"] = s.sugar_extract;
    d["ethanol_g"] = s.ethanol;
    d["co2_g"] = s.co2;
    d["temperature_c"] = s.temperature;
    d["volume_l"] = s.volume;
    d["volume_20c_l"] = s.volume_20c;
    d["extract_degp"] = s.extract;
    d["apparent_extract_degp"] = s.apparent_extract;
    d["gravity_20_20"] = s.gravity;
    d["hydrometer"] = number(s.hydrometer);
    d["refractometer_degbx"] = number(s.refractometer);
    d["bitterness_bu"] = s.bitterness;
    d["colour_srm"] = s.colour;
    d["alcohol_by_volume"] = s.alcohol_by_volume;
    return d;
}

py::dict package(const batch::package_result<double>& p) {
    py::dict d;
    d["kind"] = p.kind;
    d["package"] = p.package;
    d["bottles"] = whole(p.bottles);
    d["remainder_l"] = number(p.remainder);
    d["residual_vol"] = number(p.residual);
    d["carbonation_vol"] = number(p.carbonation);
    d["priming_sugar_g"] = number(p.priming_sugar);
    d["priming_alcohol_by_volume"] = number(p.priming_alcohol);
    d["serving_pressure_bar"] = number(p.serving_pressure);
    d["hottest_pressure_bar"] = number(p.hottest_pressure);
    d["hazard_pressure_bar"] = number(p.hazard_pressure);
    d["hazard_carbonation_vol"] = number(p.hazard_carbonation);
    d["level"] = p.level;
    d["regulator_pressure_bar"] = number(p.regulator_pressure);
    return d;
}

py::dict result(const forecast& f) {
    py::dict d;
    d["format"] = "wortmath batch 1";
    d["name"] = f.name;
    d["barometer_bar"] = f.barometer;
    d["boiling_temperature_c"] = f.boiling_temperature;
    py::dict models;
    batch::models_table::each_key([&](std::string_view key, const batch::word& w) { models[py::str(std::string(key))] = w.value; }, f.models);
    d["models"] = models;
    py::list steps;
    for (auto const& s : f.steps) {
        py::dict one;
        one["number"] = s.number;
        one["line"] = s.line;
        one["do"] = s.do_word;
        one["place"] = s.place;
        if (s.minutes) one["minutes"] = *s.minutes;
        one["after"] = s.after ? py::object(state(*s.after)) : py::none();
        one["reported"] = by_name(s.reported);
        steps.append(one);
    }
    d["steps"] = steps;
    py::dict ledger;
    ledger["in"] = grams(f.in);
    ledger["out"] = grams(f.out);
    ledger["kept_g"] = f.kept;
    ledger["imbalance_g"] = f.imbalance;
    d["ledger"] = ledger;
    py::list hops;
    for (auto const& h : f.hops) {
        py::dict one;
        one["step"] = h.step;
        one["name"] = text(h.name);
        one["minutes"] = number(h.minutes);
        one["alpha_g"] = h.alpha_g;
        one["utilisation"] = h.utilisation;
        one["bu"] = h.bitterness;
        one["bu_by_model"] = by_name(h.by_model);
        hops.append(one);
    }
    d["hops"] = hops;
    py::dict r;
    r["original_gravity"] = number(f.original_gravity);
    r["original_extract_degp"] = number(f.original_extract);
    r["final_gravity"] = number(f.final_gravity);
    r["apparent_attenuation"] = number(f.apparent_attenuation);
    r["real_attenuation"] = number(f.real_attenuation);
    r["alcohol_by_volume"] = number(f.alcohol_by_volume);
    r["alcohol_by_volume_before_priming"] = number(f.alcohol_by_volume_before_priming);
    r["alcohol_by_mass"] = number(f.alcohol_by_mass);
    r["alcohol_by_formula"] = f.final_gravity ? py::object(by_name(f.alcohol_by_formula)) : py::none();
    r["bitterness_bu"] = number(f.bitterness);
    r["bitterness_by_model"] = by_name(f.bitterness_by_model);
    r["bitterness_ratio"] = number(f.bitterness_ratio);
    r["colour_srm"] = number(f.colour);
    r["colour_ebc"] = number(f.colour_ebc);
    r["colour_by_model"] = f.colour ? py::object(by_name(f.colour_by_model)) : py::none();
    r["swatch"] = f.swatch ? py::object(py::cast(std::vector<int>(f.swatch->begin(), f.swatch->end()))) : py::none();
    r["colour_word"] = f.has_colour_words ? py::object(py::cast(f.colour_words)) : py::none();
    r["volume_packaged_l"] = number(f.volume_packaged);
    r["cells_needed"] = number(f.cells_needed);
    r["dry_yeast_g"] = number(f.dry_yeast);
    r["energy_kj_per_l"] = number(f.energy);
    d["results"] = r;
    d["package"] = f.package ? py::object(package(*f.package)) : py::none();
    py::list cautions;
    for (auto const& c : f.cautions) {
        py::dict one;
        one["id"] = c.id;
        one["level"] = c.level;
        one["step"] = step(c.step);
        cautions.append(one);
    }
    d["cautions"] = cautions;
    py::list outside;
    for (auto const& o : f.outside_range) {
        py::dict one;
        one["step"] = step(o.step);
        one["model"] = o.model;
        one["argument"] = o.argument;
        one["value"] = o.value;
        outside.append(one);
    }
    d["outside_range"] = outside;
    py::list assumed;
    for (auto const& a : f.assumed) {
        py::dict one;
        one["step"] = a.step;
        one["key"] = a.key;
        one["value"] = std::visit([](auto const& v) -> py::object { return py::cast(v); }, a.value);
        one["name"] = text(a.name);
        assumed.append(one);
    }
    d["assumed"] = assumed;
    d["reasons"] = f.reasons;
    return d;
}

// The steps as the file has them: do, number, line, and every key with its value, text and unit.
struct teller {
    py::dict& to;
    static const char* measured(batch::measure m) {
        constexpr const char* names[]{"g", "L", "min", "d", "degC", "bar", "m", "g/h", "L/h", "kW", "share", "SRM", "EBC", "SG", "degP", "vol", "g/L", "L/kg", "number"};
        return names[static_cast<int>(m)];
    }
    static py::dict told(const batch::amount<double>& a) {
        py::dict d;
        d["value"] = a.value;
        d["in"] = measured(a.in);
        d["text"] = a.text;
        d["unit"] = a.unit;
        d["line"] = a.line;
        d["given"] = a.given;
        return d;
    }
    void operator()(std::string_view key, const batch::amount<double>& a) { to[py::str(std::string(key))] = told(a); }
    void operator()(std::string_view key, const std::optional<batch::amount<double>>& a) { to[py::str(std::string(key))] = a ? py::object(told(*a)) : py::none(); }
    void operator()(std::string_view key, const std::vector<batch::amount<double>>& list) {
        py::list l;
        for (auto const& a : list) l.append(told(a));
        to[py::str(std::string(key))] = l;
    }
    template <class Item>
    void operator()(std::string_view key, const std::vector<Item>& list) {
        py::list l;
        for (auto const& item : list) {
            py::dict d;
            d["line"] = item.line;
            Item::each_key(teller{d}, item);
            l.append(d);
        }
        to[py::str(std::string(key))] = l;
    }
    void operator()(std::string_view key, const batch::word& w) { to[py::str(std::string(key))] = w.value; }
    void operator()(std::string_view key, const batch::flag& f) { to[py::str(std::string(key))] = f.value; }
    void operator()(std::string_view key, const std::optional<std::string>& s) { to[py::str(std::string(key))] = text(s); }
};

py::list steps_of(const batch::batch<double>& b) {
    py::list l;
    for (auto const& s : b.steps) {
        std::visit(
            [&](auto const& one) {
                py::dict d;
                d["number"] = one.number;
                d["line"] = one.line;
                d["do"] = std::string(std::remove_cvref_t<decltype(one)>::do_word);
                std::remove_cvref_t<decltype(one)>::each_key(teller{d}, one);
                l.append(d);
            },
            s);
    }
    return l;
}

}  // namespace

void add_batch(py::module_& m) {
    static PyObject* const error = PyErr_NewExceptionWithDoc("wortmath._core.BatchError", "A batch file that cannot be brewed; says line, step and key.", PyExc_ValueError, nullptr);
    m.add_object("BatchError", py::handle(error));
    py::register_local_exception_translator([](std::exception_ptr p) {
        try {
            if (p) std::rethrow_exception(p);
        } catch (const batch::file_error& e) {
            py::object const exception = py::handle(error)(e.what());
            exception.attr("line") = e.line();
            exception.attr("step") = e.step();
            exception.attr("do") = e.do_word();
            exception.attr("key") = e.key();
            PyErr_SetObject(error, exception.ptr());
        }
    });

    py::class_<batch::batch<double>>(m, "Batch", "A batch as its file has it.")
        .def_property_readonly("name", [](const batch::batch<double>& b) { return b.name; })
        .def_property_readonly("notes", [](const batch::batch<double>& b) { return b.notes; })
        .def_property_readonly("steps", &steps_of)
        .def_property_readonly("instruments", [](const batch::batch<double>& b) {
            py::dict d;
            batch::instruments_table<double>::each_key(teller{d}, b.instruments);
            return d;
        })
        .def("_forecast", [](const batch::batch<double>& b) {
            forecast f;
            {
                py::gil_scoped_release const release;
                f = batch::forecast(b);
            }
            return result(f);
        });
    m.def("read_text", [](const std::string& text) { return batch::read_text(text); }, py::arg("text"));
    m.def("read_file", [](const std::filesystem::path& path) { return batch::read_file(path); }, py::arg("path"));
    m.def("caution_text", [](const std::string& id) { return std::string(batch::caution_text(id)); }, py::arg("id"));
    m.def("caution_ids", [] { return std::vector<std::string>(batch::caution_ids.begin(), batch::caution_ids.end()); });
}
