// The texts of the cautions, written once. Which apply to a batch is decided by the forecast.
#pragma once

#include <array>
#include <string_view>

namespace wortmath::batch {

struct caution_entry {
    std::string_view id, text;
};

inline constexpr caution_entry caution_texts[]{
    {"hot_liquid",
     "Hot liquid scalds: water at 60 degC burns deeply within seconds, boiling wort sticks and burns at once. Lift nothing heavy that is hot, keep children and "
     "animals away, never boil or steam in a closed vessel."},
    {"burner",
     "Gas burners and charcoal make carbon monoxide, which has no smell: outdoor burners belong outdoors, an open window or garage door is not enough. Use a "
     "carbon-monoxide alarm. Electric elements need a residual-current device and must stay covered. Fixed gas and mains wiring are licensed work; local codes come first."},
    {"boil_over",
     "A kettle can boil over when extract or hops go in: heat off, stir, add slowly, hands and face clear. Hop pellets above all make hot wort foam up at once."},
    {"hot_glass", "Wort above 40 degC can break a glass vessel. Cool it first, or use a vessel made for hot liquid."},
    {"warm_pitch", "The wort is warmer than the range given for the yeast. Cool it before pitching."},
    {"cold_pitch", "The wort is colder than the range given for the yeast. Fermentation may start late or not at all."},
    {"co2_room",
     "Fermentation gives off carbon dioxide, which gathers in low and closed rooms, has no smell and can suffocate. Keep the gas path of the vessel free, ventilate, "
     "use a CO2 detector at low level in small rooms, and never enter a room to rescue someone: call the emergency service. Workplace rules come first."},
    {"yeast_short", "The yeast given is less than half of what this wort needs by the usual rate. A slow start leaves the wort open to spoilage, and fermentation may stop early."},
    {"early_package",
     "Nothing in the file says that fermentation is finished. It counts as finished when the gravity has reached the value of a forced fermentation, or is unchanged "
     "over several days at fermentation temperature. Bottles filled too early can burst and throw glass. A computed final gravity proves nothing."},
    {"package_pressure",
     "The pressure of this package meets a rule of this project (not a standard) for caution or stop. Use less sugar or gas, a stronger rated package, or a colder "
     "place; the maker's working pressure and local rules decide."},
    {"bottles",
     "Bottles can burst without warning and throw glass. Unfinished fermentation, double sugar, fruit or sugar added late, wild or diastatic yeast, warm storage, "
     "overfilling, freezing and worn glass add up. The figures are estimates; the margin of a used bottle is not known. Condition bottles inside a closed box, away "
     "from people; wear eye and hand protection when handling suspect bottles, chill them before moving or opening them, never heat or freeze them."},
    {"keg",
     "Kegs and gas cylinders hold pressure that can kill: regulator, relief valve and hoses rated for it, never above the plate of the keg, vented before opening or "
     "cleaning. Never pressurise a vessel that has no rating. Pressure-equipment rules and the maker's data come first."},
    {"dry_hop_restart",
     "Dry hops carry enzymes that turn dextrins into sugar: fermentation can start again, in the package too. A gravity that was stable before dry hopping proves "
     "nothing; wait until several readings days apart agree, and only then package. No model here predicts the amount."},
    {"hop_dog", "Hops, fresh or spent, can poison dogs. Keep them and the spent hops out of reach."},
    {"cleaning",
     "Never mix a chlorine product with any acid or with ammonia. Add acid to water, never water to acid. Wear eye and hand protection with acid and caustic; caustic "
     "attacks aluminium. Never seal percarbonate in. Follow the label of the product, and keep it from children. Chill and pitch on the same day: wort sealed warm can grow dangerous bacteria."},
    {"wide_bitterness", "The published formulas for bitterness differ by more than a factor of two for this batch. Take the number as a rough one."},
    {"hop_ceiling", "More than 240 mg of alpha acids per litre were dosed into the kettle. They no longer all dissolve, which the formulas do not know: expect less bitterness than computed."},
    {"low_attenuation",
     "Fermentation is said to be finished, yet less than 60 % of the extract is gone and no limit of attenuation is given. What has stopped may start again in the package. A forced fermentation settles it."},
    {"steep_starch", "A grain with the yield of base malt is steeped. Without a mash it gives starch, not sugar: less extract than computed, and haze."},
};

inline constexpr auto caution_ids = [] {
    std::array<std::string_view, sizeof caution_texts / sizeof *caution_texts> ids{};
    for (std::size_t i = 0; i < ids.size(); ++i) ids[i] = caution_texts[i].id;
    return ids;
}();

// Empty for an id that does not exist.
constexpr std::string_view caution_text(std::string_view id) noexcept {
    for (auto const& c : caution_texts)
        if (c.id == id) return c.text;
    return {};
}

}  // namespace wortmath::batch
