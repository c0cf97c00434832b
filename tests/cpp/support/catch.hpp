// Catch2 of either generation: version 2 has one header, version 3 has many.
#pragma once
#if __has_include(<catch2/catch_all.hpp>)
#include <catch2/catch_all.hpp>
#else
#include <catch2/catch.hpp>
namespace Catch {
using namespace Catch::Matchers;
}
#endif
