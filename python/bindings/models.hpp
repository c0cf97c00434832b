// The tables as callable Python objects and true NumPy ufuncs. The only file that sees the C interface of NumPy.
#pragma once

#include <Python.h>

// Adds the type Model, one object for each model (a dict by path, "_models"), and the functions of the slow path.
int add_models(PyObject* module);
