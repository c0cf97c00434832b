// Derivatives, plans and the move to another kettle, as plain dicts and lists.
#include <pybind11/pybind11.h>
#include <pybind11/stl.h>

#include "gradient.hpp"
#include "core.hpp"
#include "wortmath/batch/adjust.hpp"
#include "wortmath/batch/cautions.hpp"
#include "wortmath/batch/plan.hpp"
#include "wortmath/batch/read.hpp"

namespace py = pybind11;
namespace batch = wortmath::batch;
namespace core = wortmath::core;

namespace {

const char* measured(batch::measure m) {
    constexpr const char* names[]{"g", "L", "min", "d", "degC", "bar", "m", "g/h", "L/h", "kW", "share", "SRM", "EBC", "SG", "degP", "vol", "g/L", "L/kg", "number"};
    return names[static_cast<int>(m)];
}
py::object text_or_none(const std::string& s) { return s.empty() ? py::object(py::none()) : py::object(py::str(s)); }
py::object step_or_none(int n) { return n > 0 ? py::object(py::int_(n)) : py::object(py::none()); }

// The arguments of a model, as numbers or lists of them, None for what is not given; words by their number.
py::list model_gradient(const std::string& path, const py::list& given) {
    core::entry const* const e = core::find(path.c_str());
    core::slope_entry const* const s = core::slopes_of(path.c_str());
    if (!e) throw py::key_error("there is no model " + path);
    if (!s) throw py::type_error(path + " answers with a level of caution, which has no derivative");
    auto const arity = static_cast<std::size_t>(e->arity);
    if (given.size() != arity) throw py::type_error(path + ": one value for each argument");
    std::vector<std::vector<double>> columns(arity);
    std::vector<const double*> in(arity);
    std::unique_ptr<bool[]> absent(new bool[arity + 1]{});
    std::size_t n = 1, width = 0;
    for (std::size_t i = 0; i < arity; ++i) {
        py::object const x = given[i];
        if (x.is_none()) columns[i] = {0.0}, absent[i] = true;
        else if (e->inputs[i].what == wortmath::detail::kind::list) columns[i] = x.cast<std::vector<double>>(), n = columns[i].size();
        else columns[i] = {x.cast<double>()};
    }
    for (std::size_t i = 0; i < arity; ++i) {
        bool const list = e->inputs[i].what == wortmath::detail::kind::list;
        if (list && columns[i].size() != n) throw py::value_error(path + ": the lists must have one length");
        width += list ? n : 1;
        in[i] = columns[i].data();
    }
    auto const results = static_cast<std::size_t>(e->results);
    // std::max_align_t is enough for numbers made of doubles
    std::unique_ptr<std::byte[]> room(new std::byte[(arity * n + 1) * s->number_size]);
    std::vector<double> value(results), by(results * std::max<std::size_t>(width, 1));
    s->at(in.data(), n, absent.get(), room.get(), value.data(), by.data());
    py::list out;
    for (std::size_t k = 0; k < results; ++k) {
        py::list one;
        std::size_t at = k * width;
        for (std::size_t i = 0; i < arity; ++i) {
            if (e->inputs[i].what == wortmath::detail::kind::list) {
                one.append(std::vector<double>(by.begin() + static_cast<std::ptrdiff_t>(at), by.begin() + static_cast<std::ptrdiff_t>(at + n)));
                at += n;
            } else {
                one.append(by[at++]);
            }
        }
        out.append(py::make_tuple(value[k], one));
    }
    return out;
}

py::list batch_gradient(const batch::batch<double>& b, const std::string& key) {
    std::vector<batch::derivative> found;
    {
        py::gil_scoped_release const release;
        found = batch::gradient(b, key);
    }
    py::list out;
    for (auto const& d : found) {
        py::dict one;
        one["step"] = step_or_none(d.at.step);
        one["do"] = text_or_none(d.at.do_word);
        one["line"] = d.at.line;
        one["name"] = text_or_none(d.ingredient);
        one["key"] = d.at.key;
        one["in"] = measured(d.in);
        one["value"] = d.value;
        one["derivative"] = d.slope;
        one["given"] = d.given;
        out.append(one);
    }
    return out;
}

py::dict planned(const batch::plan_result& r) {
    py::dict d;
    d["met"] = r.met;
    d["iterations"] = r.iterations;
    py::list targets;
    for (auto const& t : r.targets) {
        py::dict one;
        one["result"] = t.result;
        one["wanted"] = t.wanted;
        one["text"] = t.text;
        one["reached"] = t.reached == t.reached ? py::object(py::float_(t.reached)) : py::object(py::none());
        one["met"] = t.met;
        one["sentence"] = text_or_none(t.sentence);
        targets.append(one);
    }
    d["targets"] = targets;
    py::list amounts;
    for (auto const& a : r.amounts) {
        py::dict one;
        one["step"] = step_or_none(a.at.step);
        one["do"] = text_or_none(a.at.do_word);
        one["line"] = a.at.line;
        one["name"] = text_or_none(a.ingredient);
        one["key"] = a.at.key;
        one["in"] = measured(a.in);
        one["before"] = a.before;
        one["after"] = a.after;
        one["least"] = a.least;
        one["most"] = a.most - a.most == 0.0 ? py::object(py::float_(a.most)) : py::object(py::none());
        one["unit"] = a.unit;
        one["before_text"] = a.before_text;
        one["after_text"] = a.after_text;
        one["at_limit"] = a.at_least ? py::object(py::str("least")) : a.at_most ? py::object(py::str("most")) : py::object(py::none());
        amounts.append(one);
    }
    d["amounts"] = amounts;
    py::list outside;
    for (auto const& o : r.newly_outside) {
        py::dict one;
        one["step"] = o.step ? py::object(py::int_(*o.step)) : py::object(py::none());
        one["model"] = o.model;
        one["argument"] = o.argument;
        one["value"] = o.value;
        outside.append(one);
    }
    d["newly_outside_range"] = outside;
    py::list cautions;
    for (auto const& c : r.new_cautions) {
        py::dict one;
        one["id"] = c.id;
        one["level"] = c.level;
        one["step"] = c.step ? py::object(py::int_(*c.step)) : py::object(py::none());
        one["text"] = std::string(batch::caution_text(c.id));
        cautions.append(one);
    }
    d["new_cautions"] = cautions;
    d["toml"] = r.text;
    return d;
}

std::optional<double> maybe(const py::dict& d, const char* key) {
    if (!d.contains(key) || d[key].is_none()) return {};
    return d[key].cast<double>();
}

py::dict rescaled(const std::string& text, const py::dict& d) {
    batch::rescale_request r;
    r.factor = maybe(d, "factor"), r.volume = maybe(d, "volume"), r.evaporation = maybe(d, "evaporation"), r.leave = maybe(d, "leave");
    r.dead_space = maybe(d, "dead_space"), r.rack_leave = maybe(d, "rack_leave"), r.packaging_loss = maybe(d, "packaging_loss");
    r.largest_boil = maybe(d, "largest_boil"), r.altitude = maybe(d, "altitude"), r.top_up_temperature = maybe(d, "top_up_temperature");
    batch::rescale_result s;
    {
        py::gil_scoped_release const release;
        s = batch::rescale(text, r);
    }
    py::dict out = planned(s.plan);
    out["factor"] = s.factor;
    out["volume_l"] = s.volume;
    out["top_up_l"] = s.top_up;
    out["boil_volume_l"] = s.boil_volume;
    out["top_up_put_in"] = s.top_up_put_in;
    out["sentences"] = s.sentences;
    return out;
}

py::object figure(const std::optional<double>& x) { return x ? py::object(py::float_(*x)) : py::object(py::none()); }

py::dict liquid(const batch::adjusted_state& s) {
    py::dict d;
    d["volume_l"] = s.volume;
    d["volume_20c_l"] = s.volume_20c;
    d["mass_g"] = s.mass;
    d["gravity_20_20"] = s.gravity;
    d["extract_degp"] = s.extract;
    d["original_extract_degp"] = s.original_extract;
    d["bitterness_bu"] = figure(s.bitterness);
    d["colour_srm"] = figure(s.colour);
    d["alcohol_by_volume"] = s.alcohol_by_volume;
    d["alcohol_expected"] = figure(s.alcohol_expected);
    return d;
}

py::dict adjusted(const py::dict& d) {
    batch::adjust_request r;
    r.stage = d["stage"].cast<std::string>();
    r.volume = d["volume"].cast<double>();
    r.gravity = d["gravity"].cast<double>();
    r.temperature = maybe(d, "temperature").value_or(20.0);
    r.target_gravity = maybe(d, "target_gravity"), r.target_volume = maybe(d, "target_volume"), r.target_alcohol = maybe(d, "target_alcohol");
    r.original_gravity = maybe(d, "original_gravity");
    r.bitterness = maybe(d, "bitterness"), r.colour = maybe(d, "colour");
    r.evaporation = maybe(d, "evaporation"), r.attenuation = maybe(d, "attenuation");
    if (d.contains("solids")) r.solids = d["solids"].cast<double>();
    if (d.contains("extract_name")) r.extract_name = d["extract_name"].cast<std::string>();
    if (auto const x = maybe(d, "extract_colour")) r.extract_colour = *x;
    r.blend_gravity = maybe(d, "blend_gravity"), r.blend_volume = maybe(d, "blend_volume"), r.blend_original_gravity = maybe(d, "blend_original_gravity");
    r.blend_bitterness = maybe(d, "blend_bitterness"), r.blend_colour = maybe(d, "blend_colour");
    auto const a = batch::adjust(r);
    py::dict out;
    out["stage"] = r.stage;
    out["now"] = liquid(a.now);
    out["target_gravity"] = figure(a.target_gravity);
    py::list choices;
    for (auto const& c : a.choices) {
        py::dict one;
        one["do"] = c.what;
        one["amount"] = c.amount;
        one["unit"] = c.unit;
        py::dict more;
        for (auto const& [name, x] : c.further) more[py::str(name)] = x;
        one["further"] = more;
        one["sentence"] = c.sentence;
        one["after"] = liquid(c.after);
        choices.append(one);
    }
    out["choices"] = choices;
    out["not_possible"] = a.not_possible;
    out["cautions"] = a.cautions;
    return out;
}

py::dict fermentation(const std::vector<double>& days, const std::vector<double>& gravities, double spread, const py::dict& d) {
    batch::fermentation_request r;
    r.days = days, r.gravities = gravities, r.standard_uncertainty = spread;
    r.original_gravity = maybe(d, "original_gravity"), r.limit_gravity = maybe(d, "limit_gravity"), r.expected_gravity = maybe(d, "expected_gravity");
    auto const f = batch::judge_fermentation(r);
    py::dict out;
    out["verdict"] = f.verdict;
    out["sentence"] = f.sentence;
    out["slope_per_day"] = f.slope;
    out["slope_uncertainty"] = f.slope_uncertainty;
    out["drop"] = f.drop;
    out["drop_uncertainty"] = f.drop_uncertainty;
    out["probability_of_no_change"] = f.probability;
    out["smallest_visible_per_day"] = f.detectable;
    out["remaining_gravity_drop"] = figure(f.remaining_drop);
    out["remaining_co2_vol"] = figure(f.remaining_co2);
    out["remaining_co2_upper_vol"] = figure(f.remaining_co2_upper);
    out["cautions"] = f.cautions;
    return out;
}

}  // namespace

void add_plan(py::module_& m) {
    m.def("model_gradient", &model_gradient, py::arg("path"), py::arg("values"));
    m.def("batch_gradient", &batch_gradient, py::arg("batch"), py::arg("key"));
    m.def("result_keys", &batch::result_keys);
    m.def("plan", [](const std::string& text) {
        batch::plan_result r;
        {
            py::gil_scoped_release const release;
            r = batch::plan(text);
        }
        return planned(r);
    }, py::arg("text"));
    m.def("with_amounts", [](const std::string& text, const std::vector<std::pair<std::size_t, double>>& changes) {
        std::vector<batch::replacement> all;
        for (auto const& [at, value] : changes) all.push_back({at, value});
        return batch::with_amounts(text, all);
    }, py::arg("text"), py::arg("changes"));
    m.def("rescale", &rescaled, py::arg("text"), py::arg("request"));
    m.def("adjust", &adjusted, py::arg("request"));
    m.def("judge_fermentation", &fermentation, py::arg("days"), py::arg("gravities"), py::arg("standard_uncertainty"), py::arg("further"));
}
