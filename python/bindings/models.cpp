#include "models.hpp"

#define NPY_NO_DEPRECATED_API NPY_1_22_API_VERSION
#define NPY_TARGET_VERSION NPY_1_22_API_VERSION
#include <numpy/arrayobject.h>
#include <numpy/ufuncobject.h>

#include <structmember.h>

#include <cfenv>
#include <memory>
#include <string>
#include <vector>

#include "core.hpp"

namespace core = wortmath::core;
using wortmath::policy;
using wortmath::detail::kind;

namespace {

constexpr int most_inputs = 16, most_results = 4;

// What an array call is asked for, and what it met; kept for the thread between Model.__call__ and the ufunc's loop.
struct state {
    bool active = false;
    policy how = policy::nan;
    core::tally found;
};
thread_local state now;

PyObject* slow_path = nullptr;     // wortmath._call.slow(model, args, kwargs)
PyObject* report_faults = nullptr; // wortmath._call.report(model, policy, tally)
PyObject* range_error = nullptr;   // wortmath.RangeError

struct model {
    PyObject_HEAD
    PyObject* dict;
    vectorcallfunc vectorcall;
    const core::entry* e;
    PyObject* names;        // tuple of interned argument names
    PyObject* ufunc;        // made when first asked for
    PyObject* result_type;  // named tuple of a model with several results
    bool plain;             // scalars by the short way
    bool floats;            // arrays by the short way
};

struct loop_data {
    const core::entry* e;
    core::element input, output;
};

// ---- ufuncs ---------------------------------------------------------------------------------------------------------

void after_loop(const core::tally& found) {
    // Branches that were not taken may have left flags behind; only real faults may show.
    std::feclearexcept(FE_ALL_EXCEPT);
    if (!now.active && found.faults() != 0) std::feraiseexcept(FE_INVALID);
}

void elementwise(char** args, npy_intp const* dims, npy_intp const* steps, void* data) {
    auto const& d = *static_cast<const loop_data*>(data);
    core::tally own;
    core::tally& found = now.active ? now.found : own;
    std::ptrdiff_t moves[most_inputs + most_results];
    for (int i = 0; i < d.e->arity + d.e->results; ++i) moves[i] = steps[i];
    core::run(*d.e, now.active ? now.how : policy::nan, args, moves, static_cast<std::size_t>(dims[0]), d.input, d.output, found);
    after_loop(found);
}

void over_lists(char** args, npy_intp const* dims, npy_intp const* steps, void* data) {
    const core::entry& e = *static_cast<const loop_data*>(data)->e;
    core::tally own;
    core::tally& found = now.active ? now.found : own;
    policy const how = now.active ? now.how : policy::nan;
    std::size_t const n = static_cast<std::size_t>(dims[1]);
    std::vector<double> store(static_cast<std::size_t>(e.arity) * (n ? n : 1));
    for (npy_intp k = 0; k < dims[0]; ++k) {
        const double* in[most_inputs];
        double out[most_results];
        int core_dim = 0;
        for (int i = 0; i < e.arity; ++i) {
            double* const to = store.data() + static_cast<std::size_t>(i) * (n ? n : 1);
            const char* from = args[i] + k * steps[i];
            in[i] = to;
            if (e.inputs[i].what == kind::list) {
                npy_intp const inner = steps[e.arity + e.results + core_dim++];
                for (std::size_t j = 0; j < n; ++j, from += inner) to[j] = *reinterpret_cast<const double*>(from);
            } else {
                *to = *reinterpret_cast<const double*>(from);
            }
        }
        wortmath::range_error error;
        bool lost = core::diagnose(e, how, in, n, error);
        if (!lost) {
            e.listed(in, n, out);
            bool nan = false;
            for (int i = 0; i < e.arity; ++i)
                for (std::size_t j = 0; j < (e.inputs[i].what == kind::list ? n : 1); ++j) nan = nan || (in[i][j] != in[i][j] && !core::is_absent(in[i][j]));
            if (!nan && e.refusal && out[0] != out[0]) {
                if (found.faults() == 0) found.first_input = -1, found.first_region = wortmath::region::impossible;
                ++found.undefined;
            } else if (!nan && e.holds && how != policy::extrapolate && !e.holds(in, n, out)) {
                if (found.faults() == 0) found.first_input = -1, found.first_region = wortmath::region::joint;
                ++found.joint, lost = true;
            }
        } else {
            if (found.faults() == 0) {
                found.first_value = error.value, found.first_region = error.where;
                for (int i = 0; i < e.arity; ++i)
                    if (e.inputs[i].name == error.argument) found.first_input = i;
            }
            ++(error.where == wortmath::region::impossible ? found.impossible : found.unvalidated);
        }
        for (int r = 0; r < e.results; ++r) *reinterpret_cast<double*>(args[e.arity + r] + k * steps[e.arity + r]) = lost ? wortmath::undefined : out[r];
        ++found.elements;
    }
    after_loop(found);
}

PyObject* make_ufunc(const core::entry& e) {
    // NumPy keeps pointers to all of this for as long as the ufunc lives, which is as long as the process.
    struct keeper {
        loop_data data[2];
        void* pointers[2];
        PyUFuncGenericFunction functions[2];
        char types[2 * (most_inputs + most_results)];
        std::string signature, doc;
    };
    auto* const k = new keeper{};
    int const columns = e.arity + e.results;
    bool none = false;
    for (int i = 0; i < e.arity; ++i) none = none || e.inputs[i].what == kind::optional_number;
    // "not given" is a NaN with a payload, which float32 would lose.
    int const kinds = e.has_lists || e.guards || none ? 1 : 2;
    for (int t = 0; t < kinds; ++t) {
        // float32 first: NumPy takes the first loop to which all arguments convert without loss
        bool const f32 = kinds == 2 && t == 0;
        k->data[t] = {&e, f32 ? core::element::f32 : core::element::f64, e.guards ? core::element::i64 : f32 ? core::element::f32 : core::element::f64};
        k->pointers[t] = &k->data[t];
        k->functions[t] = e.has_lists ? over_lists : elementwise;
        for (int i = 0; i < columns; ++i) k->types[t * columns + i] = static_cast<char>(f32 ? NPY_FLOAT : i >= e.arity && e.guards ? NPY_INT64 : NPY_DOUBLE);
    }
    k->doc = std::string(e.path.full) + " for arrays";
    if (!e.has_lists)
        return PyUFunc_FromFuncAndData(k->functions, k->pointers, k->types, kinds, e.arity, e.results, PyUFunc_None, e.path.full, k->doc.c_str(), 0);
    for (int i = 0; i < e.arity; ++i) k->signature += std::string(i ? "," : "") + (e.inputs[i].what == kind::list ? "(n)" : "()");
    k->signature += "->";
    for (int r = 0; r < e.results; ++r) k->signature += r ? ",()" : "()";
    return PyUFunc_FromFuncAndDataAndSignature(k->functions, k->pointers, k->types, kinds, e.arity, e.results, PyUFunc_None, e.path.full, k->doc.c_str(), 0, k->signature.c_str());
}

PyObject* ufunc_of(model* m) {
    if (!m->ufunc) m->ufunc = make_ufunc(*m->e);
    return m->ufunc;
}

// ---- results --------------------------------------------------------------------------------------------------------

PyObject* result_value(const core::output_entry& o, double v) {
    if (o.words) {
        if (!o.several_words) return PyUnicode_FromString(o.words[static_cast<std::size_t>(v)]);
        PyObject* const list = PyList_New(0);
        for (std::size_t i = 0; list && i < o.word_total; ++i) {
            if (!((static_cast<unsigned>(v) >> i) & 1u)) continue;
            PyObject* const word = PyUnicode_FromString(o.words[i]);
            if (!word || PyList_Append(list, word) < 0) return nullptr;
            Py_DECREF(word);
        }
        return list;
    }
    if (o.truth) return PyBool_FromLong(v != 0.0);
    if (o.whole) return PyLong_FromDouble(v);
    return PyFloat_FromDouble(v);
}

PyObject* results(model* m, const double* out) {
    const core::entry& e = *m->e;
    if (e.results == 1 && !e.outputs[0].name) return result_value(e.outputs[0], out[0]);
    PyObject* const values = PyTuple_New(e.results);
    for (int k = 0; values && k < e.results; ++k) {
        bool const unknown = out[k] != out[k] && (e.outputs[k].whole || e.outputs[k].truth);
        PyObject* const v = unknown ? PyFloat_FromDouble(out[k]) : result_value(e.outputs[k], out[k]);
        if (!v) return nullptr;
        PyTuple_SET_ITEM(values, k, v);
    }
    if (!m->result_type && !(m->result_type = PyObject_GetAttrString(reinterpret_cast<PyObject*>(m), "result_type"))) return nullptr;
    PyObject* const holder = PyTuple_Pack(1, values);
    Py_XDECREF(values);
    if (!holder) return nullptr;
    PyObject* const named = PyTuple_Type.tp_new(reinterpret_cast<PyTypeObject*>(m->result_type), holder, nullptr);
    Py_DECREF(holder);
    return named;
}

PyObject* raise(const wortmath::range_error& error) {
    const char* const regions[]{"unvalidated", "impossible", "joint"};
    PyObject* const args = Py_BuildValue("(sssd(dddd)s)", error.text, error.model, error.argument, error.value, error.range.valid_lo, error.range.valid_hi,
                                         error.range.lo, error.range.hi, regions[static_cast<int>(error.where)]);
    if (!args) return nullptr;
    PyObject* const exception = PyObject_CallObject(range_error, args);
    Py_DECREF(args);
    if (exception) {
        PyErr_SetObject(range_error, exception);
        Py_DECREF(exception);
    }
    return nullptr;
}

// A guard answers its worst where others refuse, but an optional number that is impossible is refused as everywhere.
bool of_optional_number(const core::entry& e, const wortmath::range_error& error) noexcept {
    for (int i = 0; i < e.arity; ++i)
        if (std::strcmp(e.inputs[i].name, error.argument) == 0) return e.inputs[i].what == kind::optional_number;
    return false;
}

PyObject* evaluate(model* m, policy how, const double* const* in, std::size_t n) {
    const core::entry& e = *m->e;
    double out[most_results];
    wortmath::range_error error;
    if (core::diagnose(e, how, in, n, error)) {
        if (e.guards && error.where == wortmath::region::impossible && (how == policy::nan || !of_optional_number(e, error))) return results(m, &e.worst);
        if (how == policy::nan && !e.nan_is_impossible) {
            for (double& v : out) v = wortmath::undefined;
            return results(m, out);
        }
        return raise(error);
    }
    bool nan = false;
    for (int i = 0; i < e.arity; ++i)
        for (std::size_t j = 0; j < (e.inputs[i].what == kind::list ? n : 1); ++j) nan = nan || (in[i][j] != in[i][j] && !core::is_absent(in[i][j]) && !(e.guards && e.inputs[i].what == kind::optional_number));
    if (nan && e.guards) return results(m, &e.worst);
    if (e.has_lists) {
        e.listed(in, n, out);
    } else {
        double flat[most_inputs];
        for (int i = 0; i < e.arity; ++i) flat[i] = *in[i];
        e.scalar(flat, out);
    }
    if (!nan) {
        bool const undefined = e.refusal && out[0] != out[0];
        bool const outside = !undefined && e.holds && how != policy::extrapolate && !e.holds(in, n, out);
        if (undefined || outside) {
            if (how == policy::nan) {
                for (double& v : out) v = wortmath::undefined;
            } else {
                core::describe_joint(e, outside ? wortmath::region::joint : wortmath::region::impossible, error);
                return raise(error);
            }
        }
    }
    return results(m, out);
}

// ---- calls ----------------------------------------------------------------------------------------------------------

bool plain_number(PyObject* x, const core::input_entry& in, double& v) {
    switch (in.what) {
        case kind::number:
        case kind::optional_number:
            if (PyFloat_Check(x)) return v = PyFloat_AS_DOUBLE(x), true;
            if (PyLong_Check(x) && !PyBool_Check(x)) {
                v = PyLong_AsDouble(x);
                if (v == -1.0 && PyErr_Occurred()) return PyErr_Clear(), false;
                return true;
            }
            if (x == Py_None && in.what == kind::optional_number) return v = core::absent(), true;
            return false;
        case kind::truth:
            if (PyBool_Check(x)) return v = x == Py_True ? 1.0 : 0.0, true;
            return false;
        case kind::word: {
            if (!PyUnicode_Check(x)) return false;
            const char* const text = PyUnicode_AsUTF8(x);
            if (!text) return PyErr_Clear(), false;
            for (std::size_t i = 0; i < in.word_total; ++i)
                if (std::strcmp(text, in.words[i]) == 0) return v = static_cast<double>(i), true;
            return false;
        }
        case kind::list: break;
    }
    return false;
}

PyObject* by_the_slow_path(model* m, PyObject* const* args, Py_ssize_t given, PyObject* kwnames) {
    PyObject* const positional = PyTuple_New(given);
    PyObject* const keywords = PyDict_New();
    PyObject* answer = nullptr;
    if (positional && keywords) {
        for (Py_ssize_t i = 0; i < given; ++i) PyTuple_SET_ITEM(positional, i, Py_NewRef(args[i]));
        Py_ssize_t const named = kwnames ? PyTuple_GET_SIZE(kwnames) : 0;
        bool fine = true;
        for (Py_ssize_t i = 0; i < named; ++i) fine = fine && PyDict_SetItem(keywords, PyTuple_GET_ITEM(kwnames, i), args[given + i]) == 0;
        if (fine) answer = PyObject_CallFunctionObjArgs(slow_path, reinterpret_cast<PyObject*>(m), positional, keywords, nullptr);
    }
    Py_XDECREF(positional);
    Py_XDECREF(keywords);
    return answer;
}

bool float_array(PyObject* x) {
    return PyArray_CheckExact(x) && (PyArray_TYPE(reinterpret_cast<PyArrayObject*>(x)) == NPY_DOUBLE || PyArray_TYPE(reinterpret_cast<PyArrayObject*>(x)) == NPY_FLOAT);
}

PyObject* tally_of(const core::tally& t) {
    const char* const regions[]{"unvalidated", "impossible", "joint"};
    return Py_BuildValue("(nnnnnids)", static_cast<Py_ssize_t>(t.elements), static_cast<Py_ssize_t>(t.impossible), static_cast<Py_ssize_t>(t.unvalidated),
                         static_cast<Py_ssize_t>(t.joint), static_cast<Py_ssize_t>(t.undefined), t.first_input, t.first_value, regions[static_cast<int>(t.first_region)]);
}

// All positional, arrays of floats and plain numbers only, default policy.
PyObject* over_arrays(model* m, PyObject* const* args, Py_ssize_t given) {
    const core::entry& e = *m->e;
    PyObject* all[most_inputs];
    for (int i = 0; i < e.arity; ++i) {
        if (i < given) {
            all[i] = Py_NewRef(args[i]);
        } else if (!(all[i] = PyFloat_FromDouble(e.inputs[i].fallback))) {
            while (i--) Py_DECREF(all[i]);
            return nullptr;
        }
    }
    state const before = now;
    now = {true, policy::nan, {}};
    PyObject* answer = ufunc_of(m) ? PyObject_Vectorcall(m->ufunc, all, static_cast<std::size_t>(e.arity), nullptr) : nullptr;
    core::tally const found = now.found;
    now = before;
    for (int i = 0; i < e.arity; ++i) Py_DECREF(all[i]);
    if (answer && found.faults()) {
        PyObject* const said = PyObject_CallFunction(report_faults, "OsN", reinterpret_cast<PyObject*>(m), "nan", tally_of(found));
        if (!said) Py_CLEAR(answer);
        Py_XDECREF(said);
    }
    return answer;
}

PyObject* call(PyObject* self, PyObject* const* args, std::size_t nargsf, PyObject* kwnames) {
    auto* const m = reinterpret_cast<model*>(self);
    const core::entry& e = *m->e;
    Py_ssize_t const given = PyVectorcall_NARGS(nargsf);
    if (!m->plain || given > e.arity) return by_the_slow_path(m, args, given, kwnames);
    double v[most_inputs];
    unsigned known = (1u << given) - 1u;
    for (Py_ssize_t i = 0; i < given; ++i) {
        if (!plain_number(args[i], e.inputs[i], v[i])) {
            if (!m->floats || kwnames || given < e.required) return by_the_slow_path(m, args, given, kwnames);
            for (Py_ssize_t k = 0; k < given; ++k)
                if (!float_array(args[k]) && !PyFloat_Check(args[k])) return by_the_slow_path(m, args, given, kwnames);
            return over_arrays(m, args, given);
        }
    }
    if (kwnames) {
        Py_ssize_t const named = PyTuple_GET_SIZE(kwnames);
        for (Py_ssize_t k = 0; k < named; ++k) {
            PyObject* const name = PyTuple_GET_ITEM(kwnames, k);
            int at = -1;
            for (int i = 0; i < e.arity; ++i)
                if (PyTuple_GET_ITEM(m->names, i) == name) at = i;
            if (at < 0 || (known >> at) & 1u || !plain_number(args[given + k], e.inputs[at], v[at])) return by_the_slow_path(m, args, given, kwnames);
            known |= 1u << at;
        }
    }
    bool inside = true;
    for (int i = 0; i < e.arity; ++i) {
        const core::input_entry& in = e.inputs[i];
        if (!((known >> i) & 1u)) {
            if (!in.optional) return by_the_slow_path(m, args, given, kwnames);
            v[i] = in.fallback;
        }
        inside = inside && v[i] >= in.range.valid_lo && v[i] <= in.range.valid_hi;
    }
    if (inside && !e.holds && !e.refusal) [[likely]] {
        double out[most_results];
        e.scalar(v, out);
        if (e.results == 1 && !e.outputs[0].words && !e.outputs[0].whole && !e.outputs[0].truth && !e.outputs[0].name) return PyFloat_FromDouble(out[0]);
        return results(m, out);
    }
    const double* in[most_inputs];
    for (int i = 0; i < e.arity; ++i) in[i] = v + i;
    return evaluate(m, policy::raise, in, 1);
}

// ---- for the slow path ----------------------------------------------------------------------------------------------

bool policy_from(const char* text, policy& how) {
    if (!std::strcmp(text, "raise")) return how = policy::raise, true;
    if (!std::strcmp(text, "nan")) return how = policy::nan, true;
    if (!std::strcmp(text, "extrapolate")) return how = policy::extrapolate, true;
    PyErr_Format(PyExc_ValueError, "policy = \"%s\" is not one of \"raise\", \"nan\", \"extrapolate\"", text);
    return false;
}

PyTypeObject* model_type = nullptr;

// evaluate(model, values, policy): scalars as floats (words by number, None as absent), lists as contiguous float64 arrays
PyObject* evaluate_from_python(PyObject*, PyObject* args) {
    PyObject *self, *values;
    const char* how_text;
    policy how;
    if (!PyArg_ParseTuple(args, "O!O!s", model_type, &self, &PyTuple_Type, &values, &how_text) || !policy_from(how_text, how)) return nullptr;
    auto* const m = reinterpret_cast<model*>(self);
    double store[most_inputs];
    const double* in[most_inputs];
    std::size_t n = 1;
    for (int i = 0; i < m->e->arity; ++i) {
        PyObject* const x = PyTuple_GetItem(values, i);
        if (!x) return nullptr;
        if (PyArray_Check(x)) {
            auto* const a = reinterpret_cast<PyArrayObject*>(x);
            n = static_cast<std::size_t>(PyArray_SIZE(a));
            in[i] = static_cast<const double*>(PyArray_DATA(a));
        } else {
            store[i] = x == Py_None ? core::absent() : PyFloat_AsDouble(x);
            if (PyErr_Occurred()) return nullptr;
            in[i] = store + i;
        }
    }
    return evaluate(m, how, in, n);
}

// through_ufunc(model, args, kwargs, policy) -> (what the ufunc returned, tally)
PyObject* through_ufunc(PyObject*, PyObject* args) {
    PyObject *self, *positional, *keywords;
    const char* how_text;
    policy how;
    if (!PyArg_ParseTuple(args, "O!O!O!s", model_type, &self, &PyTuple_Type, &positional, &PyDict_Type, &keywords, &how_text) || !policy_from(how_text, how)) return nullptr;
    auto* const m = reinterpret_cast<model*>(self);
    state const before = now;
    now = {true, how, {}};
    PyObject* const answer = ufunc_of(m) ? PyObject_Call(m->ufunc, positional, keywords) : nullptr;
    core::tally const found = now.found;
    now = before;
    if (!answer) return nullptr;
    return Py_BuildValue("(NN)", answer, tally_of(found));
}

PyObject* absent_from_python(PyObject*, PyObject*) { return PyFloat_FromDouble(core::absent()); }

// refusal(model, input, value, region) -> exception
PyObject* refusal_from_python(PyObject*, PyObject* args) {
    PyObject* self;
    int input;
    double value;
    const char* where;
    if (!PyArg_ParseTuple(args, "O!ids", model_type, &self, &input, &value, &where)) return nullptr;
    const core::entry& e = *reinterpret_cast<model*>(self)->e;
    wortmath::range_error error;
    auto const r = where[0] == 'u' ? wortmath::region::unvalidated : where[0] == 'j' ? wortmath::region::joint : wortmath::region::impossible;
    if (input >= 0) core::describe_input(e, input, value, r, error);
    else core::describe_joint(e, r, error);
    return raise(error);
}

PyObject* install(PyObject*, PyObject* args) {
    PyObject *slow, *report, *error;
    if (!PyArg_ParseTuple(args, "OOO", &slow, &report, &error)) return nullptr;
    Py_XSETREF(slow_path, Py_NewRef(slow));
    Py_XSETREF(report_faults, Py_NewRef(report));
    Py_XSETREF(range_error, Py_NewRef(error));
    Py_RETURN_NONE;
}

PyObject* is_default(PyObject*, PyObject* self) {
    if (!PyObject_TypeCheck(self, model_type)) return PyErr_Format(PyExc_TypeError, "a model is expected");
    return PyBool_FromLong(reinterpret_cast<model*>(self)->e->is_default);
}

PyObject* instruction_set(PyObject*, PyObject* args) {
    int which = -1;
    if (!PyArg_ParseTuple(args, "|i", &which)) return nullptr;
    const char* const names[]{"baseline", "x86-64-v3", "x86-64-v4"};
    return PyUnicode_FromString(names[core::use_instruction_set(which)]);
}

PyMethodDef functions[]{
    {"evaluate", evaluate_from_python, METH_VARARGS, nullptr},
    {"through_ufunc", through_ufunc, METH_VARARGS, nullptr},
    {"absent", absent_from_python, METH_NOARGS, nullptr},
    {"refusal", refusal_from_python, METH_VARARGS, nullptr},
    {"install", install, METH_VARARGS, nullptr},
    {"is_default", is_default, METH_O, nullptr},
    {"instruction_set", instruction_set, METH_VARARGS, nullptr},
    {nullptr, nullptr, 0, nullptr},
};

// ---- the type -------------------------------------------------------------------------------------------------------

int traverse(PyObject* self, visitproc visit, void* arg) {
    auto* const m = reinterpret_cast<model*>(self);
    Py_VISIT(m->dict);
    Py_VISIT(m->names);
    Py_VISIT(m->ufunc);
    Py_VISIT(m->result_type);
    Py_VISIT(Py_TYPE(self));
    return 0;
}
int clear(PyObject* self) {
    auto* const m = reinterpret_cast<model*>(self);
    Py_CLEAR(m->dict);
    Py_CLEAR(m->names);
    Py_CLEAR(m->ufunc);
    Py_CLEAR(m->result_type);
    return 0;
}
void dealloc(PyObject* self) {
    PyTypeObject* const type = Py_TYPE(self);
    PyObject_GC_UnTrack(self);
    clear(self);
    type->tp_free(self);
    Py_DECREF(type);
}
PyObject* get_ufunc(PyObject* self, void*) { return Py_XNewRef(ufunc_of(reinterpret_cast<model*>(self))); }
PyObject* get_path(PyObject* self, void*) { return PyUnicode_FromString(reinterpret_cast<model*>(self)->e->path.full); }

PyMemberDef members[]{
    {"__vectorcalloffset__", T_PYSSIZET, offsetof(model, vectorcall), READONLY, nullptr},
    {"__dictoffset__", T_PYSSIZET, offsetof(model, dict), READONLY, nullptr},
    {nullptr, 0, 0, 0, nullptr},
};
PyGetSetDef getset[]{
    {"ufunc", get_ufunc, nullptr, "The NumPy ufunc of this model (words by their number).", nullptr},
    {"path", get_path, nullptr, "topic.family.model", nullptr},
    {"__dict__", PyObject_GenericGetDict, PyObject_GenericSetDict, nullptr, nullptr},
    {nullptr, nullptr, nullptr, nullptr, nullptr},
};
PyType_Slot slots[]{
    {Py_tp_call, reinterpret_cast<void*>(PyVectorcall_Call)},
    {Py_tp_dealloc, reinterpret_cast<void*>(dealloc)},
    {Py_tp_traverse, reinterpret_cast<void*>(traverse)},
    {Py_tp_clear, reinterpret_cast<void*>(clear)},
    {Py_tp_members, members},
    {Py_tp_getset, getset},
    {0, nullptr},
};
PyType_Spec spec{"wortmath.Model", sizeof(model), 0, Py_TPFLAGS_DEFAULT | Py_TPFLAGS_HAVE_GC | Py_TPFLAGS_HAVE_VECTORCALL | Py_TPFLAGS_DISALLOW_INSTANTIATION, slots};

PyObject* make_model(const core::entry& e) {
    PyObject* const self = model_type->tp_alloc(model_type, 0);
    if (!self) return nullptr;
    auto* const m = reinterpret_cast<model*>(self);
    m->vectorcall = call;
    m->e = &e;
    m->names = PyTuple_New(e.arity);
    if (!m->names) return nullptr;
    for (int i = 0; i < e.arity; ++i) PyTuple_SET_ITEM(m->names, i, PyUnicode_InternFromString(e.inputs[i].name));
    m->plain = !e.has_lists;
    m->floats = m->plain && e.results == 1 && !e.outputs[0].words && !e.outputs[0].whole && !e.outputs[0].truth && !e.outputs[0].name && e.arity > 0;
    return self;
}

int import_numpy() {
    import_array1(-1);
    import_umath1(-1);
    return 0;
}

}  // namespace

int add_models(PyObject* module) {
    if (import_numpy() < 0) return -1;
    model_type = reinterpret_cast<PyTypeObject*>(PyType_FromSpec(&spec));
    if (!model_type || PyModule_AddFunctions(module, functions) < 0) return -1;
    if (PyModule_AddObjectRef(module, "Model", reinterpret_cast<PyObject*>(model_type)) < 0) return -1;
    PyObject* const all = PyDict_New();
    if (!all) return -1;
    std::size_t count;
    const core::topic* const t = core::topics(count);
    for (std::size_t i = 0; i < count; ++i) {
        for (std::size_t k = 0; k < t[i].count; ++k) {
            PyObject* const m = make_model(t[i].entries[k]);
            if (!m || PyDict_SetItemString(all, t[i].entries[k].path.full, m) < 0) return -1;
            Py_DECREF(m);
        }
    }
    int const added = PyModule_AddObjectRef(module, "_models", all);
    Py_DECREF(all);
    return added;
}
