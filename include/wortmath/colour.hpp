#pragma once

#include "wortmath/colour/absorbance_from_ebc.hpp"
#include "wortmath/colour/absorbance_from_srm.hpp"
#include "wortmath/colour/blend.hpp"
#include "wortmath/colour/chroma_hue.hpp"
#include "wortmath/colour/clarity.hpp"
#include "wortmath/colour/difference.hpp"
#include "wortmath/colour/dilute.hpp"
#include "wortmath/colour/ebc_from_absorbance.hpp"
#include "wortmath/colour/ebc_from_iob_mash.hpp"
#include "wortmath/colour/ebc_from_srm.hpp"
#include "wortmath/colour/from_grist.hpp"
#include "wortmath/colour/grist_load.hpp"
#include "wortmath/colour/lab.hpp"
#include "wortmath/colour/labelled_extract.hpp"
#include "wortmath/colour/linner_index.hpp"
#include "wortmath/colour/lovibond_from_srm.hpp"
#include "wortmath/colour/lovibond_from_visual_ebc.hpp"
#include "wortmath/colour/malt_mass.hpp"
#include "wortmath/colour/mcu_for_colour.hpp"
#include "wortmath/colour/mcu_from_load.hpp"
#include "wortmath/colour/observer.hpp"
#include "wortmath/colour/spectrum.hpp"
#include "wortmath/colour/srgb.hpp"
#include "wortmath/colour/srgb_decode.hpp"
#include "wortmath/colour/srgb_encode.hpp"
#include "wortmath/colour/srgb_linear.hpp"
#include "wortmath/colour/srm_from_absorbance.hpp"
#include "wortmath/colour/srm_from_ebc.hpp"
#include "wortmath/colour/srm_from_lovibond.hpp"
#include "wortmath/colour/swatch.hpp"
#include "wortmath/colour/transmittance.hpp"
#include "wortmath/colour/tristimulus.hpp"
#include "wortmath/colour/tristimulus_from_transmittance.hpp"
#include "wortmath/colour/visual_ebc_from_lovibond.hpp"
#include "wortmath/colour/water_for_colour.hpp"
#include "wortmath/colour/white_point.hpp"
#include "wortmath/colour/word.hpp"
#include "wortmath/colour/xyz_from_lab.hpp"

namespace wortmath::colour {

inline constexpr auto families =
    list_families(srm_from_absorbance, absorbance_from_srm, ebc_from_absorbance, absorbance_from_ebc, ebc_from_srm, srm_from_ebc, clarity,
                  srm_from_lovibond, lovibond_from_srm, visual_ebc_from_lovibond, lovibond_from_visual_ebc, ebc_from_iob_mash, grist_load,
                  mcu_from_load, from_grist, mcu_for_colour, malt_mass, labelled_extract, blend, dilute, water_for_colour, spectrum,
                  transmittance, linner_index, observer, white_point, tristimulus, tristimulus_from_transmittance, lab, xyz_from_lab,
                  chroma_hue, srgb_linear, srgb_encode, srgb_decode, srgb, swatch, difference, word);

}  // namespace wortmath::colour
