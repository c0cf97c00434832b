// The recording number type: a formula run on it is written down, and printed from there.
#include <catch.hpp>

#include "print.hpp"
#include "wortmath/bitterness/utilisation.hpp"
#include "wortmath/extract/from_gravity.hpp"
#include "wortmath/record.hpp"

using wortmath::recorded;
using wortmath::recording;
using wortmath::step;
namespace core = wortmath::core;

TEST_CASE("a formula writes itself down") {
    recording r;
    recorded const y = wortmath::bitterness::utilisation.tinseth.formula(r.input(0), r.input(1), recorded(4.15));
    auto const at = [&](int n) { return r.nodes[static_cast<std::size_t>(n)]; };
    REQUIRE(at(y.node).what == step::over);
    CHECK(at(at(y.node).of[1]).value == 4.15);
    std::size_t named = 0, powers = 0;
    for (auto const& s : r.nodes) {
        named += s.what == step::named ? 1 : 0;
        powers += s.what == step::power ? 1 : 0;
        for (int o : s.of) CHECK(o < static_cast<int>(&s - r.nodes.data()));  // operands stand before their users
    }
    CHECK(named == 1);
    CHECK(powers == 1);
    CHECK_FALSE(r.asked_for_a_number);
}

TEST_CASE("the same step on the same operands is one step") {
    recording r;
    recorded const x = r.input(0);
    CHECK((x + 1.0).node == (x + 1.0).node);
    CHECK((x + 1.0).node != (1.0 + x).node);
    CHECK(exp(x).node != expm1(x).node);
    CHECK(select(x < 1.0, x, x).node == x.node);
    CHECK(select(true, x, recorded(2.0)).node == x.node);
    CHECK(poly(x, 3.0).node == recorded(3.0).node);
    CHECK(r.nodes[static_cast<std::size_t>(poly(x, 1.0, 2.0, 3.0).node)].of.size() == 4);
    CHECK_FALSE(r.asked_for_a_number);
    CHECK(number(x) != number(x));
    CHECK(r.asked_for_a_number);
}

TEST_CASE("recordings nest, and end with their scope") {
    recording outer;
    {
        recording inner;
        CHECK(recording::current() == &inner);
    }
    CHECK(recording::current() == &outer);
}

TEST_CASE("every model prints in every style, or says why not") {
    std::size_t topics = 0, models = 0, refused = 0;
    auto const* const all = core::topics(topics);
    for (std::size_t t = 0; t < topics; ++t) {
        for (std::size_t k = 0; k < all[t].count; ++k) {
            core::entry const& e = all[t].entries[k];
            REQUIRE(core::find_recorder(e.path.full) != nullptr);
            ++models;
            for (auto how : {core::style::latex, core::style::python, core::style::mpmath, core::style::c, core::style::javascript}) {
                try {
                    std::string const text = core::printed(e, how);
                    CHECK(text.size() > 20);
                } catch (const core::not_printable& why) {
                    INFO(e.path.full);
                    CHECK(why.why.find("no closed form") != std::string::npos);
                    ++refused;
                }
            }
        }
    }
    CHECK(models == 511);
    CHECK(refused == 5);  // bitterness.isomerisation_profile
    CHECK(core::find_recorder("extract.from_gravity.nobody") == nullptr);
}

TEST_CASE("a printed formula") {
    auto const* const e = core::find("extract.from_gravity.asbc");
    REQUIRE(e != nullptr);
    CHECK(core::printed(*e, core::style::c).find("return -616.868 + gravity * (1111.14 + gravity * (-630.272 + gravity * 135.997));") != std::string::npos);
    CHECK(core::printed(*e, core::style::openformula) == "asbc\t=-616.868+gravity*(1111.14+gravity*(-630.272+gravity*135.997))\n");
}
