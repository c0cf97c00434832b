#include <pybind11/pybind11.h>
#include <pybind11/stl.h>

#include "core.hpp"
#include "models.hpp"
#include "print.hpp"

namespace py = pybind11;
namespace core = wortmath::core;

void add_batch(py::module_& m);
void add_plan(py::module_& m);
void add_uncertainty(py::module_& m);
void add_spread(py::module_& m);

namespace {

// The largest finite number keeps infinity out of a model; to a reader it is no limit.
py::object bound(double lo, double hi) { return py::make_tuple(lo < -1e308 ? -wortmath::no_limit : lo, hi > 1e308 ? wortmath::no_limit : hi); }

py::list words_of(const char* const* words, std::size_t n) {
    py::list l;
    for (std::size_t i = 0; i < n; ++i) l.append(words[i]);
    return l;
}

// Everything that is known about a model, as plain Python objects; the Python side makes documentation of it.
py::dict describe(const std::string& path) {
    const core::entry* const e = core::find(path.c_str());
    if (!e) throw py::key_error("there is no model " + path);
    std::string const full = e->path.full;
    py::dict d;
    d["path"] = full;
    d["topic"] = full.substr(0, e->path.topic);
    d["family"] = full.substr(0, e->path.family);
    d["name"] = full.substr(e->path.family + 1);
    d["question"] = e->question;
    d["source"] = e->about->source;
    d["status"] = wortmath::spelled_out(e->about->status);
    d["use"] = e->about->use;
    d["accuracy"] = e->about->accuracy;
    d["note"] = e->about->note;
    d["danger"] = e->about->danger;
    d["is_default"] = e->is_default;
    d["family_has_default"] = e->family_has_default;
    d["holds_when"] = e->holds_when ? py::object(py::str(e->holds_when)) : py::none();
    d["refusal"] = e->refusal ? py::object(py::str(e->refusal)) : py::none();
    d["guards"] = e->guards;
    d["nan_is_impossible"] = e->nan_is_impossible;
    d["has_lists"] = e->has_lists;
    py::list inputs;
    const char* const kinds[]{"number", "optional", "list", "word", "truth"};
    for (int i = 0; i < e->arity; ++i) {
        const core::input_entry& in = e->inputs[i];
        py::dict a;
        a["name"] = in.name;
        a["kind"] = kinds[static_cast<int>(in.what)];
        a["unit"] = in.of->unit;
        a["noun"] = in.of->noun;
        a["validated"] = bound(in.range.valid_lo, in.range.valid_hi);
        a["possible"] = bound(in.range.lo, in.range.hi);
        a["words"] = words_of(in.words, in.word_total);
        a["required"] = !in.optional;
        if (in.optional) {
            if (core::is_absent(in.fallback)) a["default"] = py::none();
            else if (in.what == wortmath::detail::kind::word) a["default"] = in.words[static_cast<std::size_t>(in.fallback)];
            else if (in.what == wortmath::detail::kind::truth) a["default"] = in.fallback != 0.0;
            else a["default"] = in.fallback;
        }
        inputs.append(a);
    }
    d["inputs"] = inputs;
    py::list outputs;
    for (int i = 0; i < e->results; ++i) {
        const core::output_entry& o = e->outputs[i];
        py::dict a;
        a["name"] = o.name ? py::object(py::str(o.name)) : py::none();
        a["unit"] = o.of->unit;
        a["noun"] = o.of->noun;
        a["kind"] = o.words ? (o.several_words ? "words" : "word") : o.truth ? "truth" : o.whole ? "whole" : "number";
        a["words"] = words_of(o.words, o.word_total);
        outputs.append(a);
    }
    d["outputs"] = outputs;
    return d;
}

// A model's formula as text. `chosen` settles words, truth values and optional numbers by the number of their state.
std::string printed(const std::string& path, const std::string& style, const std::vector<int>& chosen) {
    const core::entry* const e = core::find(path.c_str());
    if (!e) throw py::key_error("there is no model " + path);
    const char* const styles[]{"latex", "python", "mpmath", "c", "javascript", "openformula"};
    for (int i = 0; i < 6; ++i) {
        if (style != styles[i]) continue;
        try {
            return core::printed(*e, static_cast<core::style>(i), chosen);
        } catch (const core::not_printable& why) {
            throw py::value_error(why.why);
        }
    }
    throw py::value_error("\"" + style + "\" is not one of latex, python, mpmath, c, javascript, openformula");
}

}  // namespace

PYBIND11_MODULE(_core, m, py::mod_gil_not_used()) {
    m.doc() = "The compiled part of wortmath.";
    if (add_models(m.ptr()) < 0) throw py::error_already_set();
    m.def("describe", &describe, py::arg("path"));
    m.def("printed", &printed, py::arg("path"), py::arg("style"), py::arg("chosen") = std::vector<int>{});
    add_batch(m);
    add_plan(m);
    add_uncertainty(m);
    add_spread(m);
}
