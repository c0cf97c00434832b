// The umbrella: all models and the batch engine. Reading batch files needs the compiled part (wortmath::core).
#pragma once

#include "wortmath/batch/cautions.hpp"
#include "wortmath/batch/forecast.hpp"
#include "wortmath/batch/read.hpp"
#include "wortmath/catalogue.hpp"
