#include "wortmath/batch/plan.hpp"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <numeric>
#include <set>

#include "batch/units.hpp"
#include "wortmath/batch/read.hpp"

namespace wortmath::batch {
namespace {

using vector = Eigen::VectorXd;
using matrix = Eigen::MatrixXd;

// min |A z - y| within bounds: active sets, for a handful of unknowns.
vector bounded_least_squares(const matrix& A, const vector& y, const vector& lo, const vector& hi, vector z) {
    auto const n = z.size();
    z = z.cwiseMax(lo).cwiseMin(hi);
    std::vector<bool> held(static_cast<std::size_t>(n), false);
    for (Eigen::Index round = 0; round < 20 * n + 20; ++round) {
        std::vector<Eigen::Index> moving;
        for (Eigen::Index i = 0; i < n; ++i)
            if (!held[static_cast<std::size_t>(i)]) moving.push_back(i);
        if (!moving.empty()) {
            auto const k = static_cast<Eigen::Index>(moving.size());
            matrix part(A.rows(), k);
            vector rest = y;
            for (Eigen::Index i = 0; i < n; ++i)
                if (held[static_cast<std::size_t>(i)]) rest -= A.col(i) * z[i];
            for (Eigen::Index j = 0; j < k; ++j) part.col(j) = A.col(moving[static_cast<std::size_t>(j)]);
            vector const best = part.colPivHouseholderQr().solve(rest);
            double reach = 1.0;
            Eigen::Index first = -1;
            for (Eigen::Index j = 0; j < k; ++j) {
                auto const i = moving[static_cast<std::size_t>(j)];
                double const step = best[j] - z[i], limit = step < 0.0 ? lo[i] : hi[i];
                if ((step < 0.0 && best[j] < limit) || (step > 0.0 && best[j] > limit)) {
                    double const part_of = (limit - z[i]) / step;
                    if (part_of < reach) reach = part_of, first = i;
                }
            }
            for (Eigen::Index j = 0; j < k; ++j) {
                auto const i = moving[static_cast<std::size_t>(j)];
                z[i] = std::clamp(z[i] + reach * (best[j] - z[i]), lo[i], hi[i]);
            }
            if (first >= 0) {
                z[first] = best[std::find(moving.begin(), moving.end(), first) - moving.begin()] < z[first] ? lo[first] : hi[first];
                held[static_cast<std::size_t>(first)] = true;
                continue;
            }
        }
        // Of those held at a bound, let go the one that would gain most by coming back.
        vector const pull = A.transpose() * (y - A * z);
        Eigen::Index release = -1;
        double most_gain = 1e-9 * (1.0 + pull.cwiseAbs().maxCoeff());
        for (Eigen::Index i = 0; i < n; ++i) {
            if (!held[static_cast<std::size_t>(i)] || lo[i] == hi[i]) continue;
            double const gain = z[i] <= lo[i] ? pull[i] : -pull[i];
            if (gain > most_gain) most_gain = gain, release = i;
        }
        if (release < 0) break;
        held[static_cast<std::size_t>(release)] = false;
    }
    return z;
}

// What a gravity point is to gravity, a hundredth is to anything else: the size of an error that matters.
double scale_of(const plan_target& t) {
    if (t.result.find("gravity") != std::string::npos) return 0.01;
    return std::fabs(t.value) > 0.0 ? std::fabs(t.value) : 1.0;
}

enum class role : unsigned char { hard, soft, left_out };

class planner {
public:
    planner(const batch<double>& b, const plan_request& r) : base_(b), request_(r) {
        batch<double> copy = b;
        auto const all = amounts_of(copy);
        auto const n = static_cast<Eigen::Index>(r.free.size());
        start_.resize(n), lo_.resize(n), hi_.resize(n);
        for (Eigen::Index i = 0; i < n; ++i) {
            plan_freedom const& f = r.free[static_cast<std::size_t>(i)];
            double const first = all.at(f.amounts.front()).is->value;
            double const unit = first != 0.0 ? std::fabs(first) : std::max(std::fabs(f.most), std::fabs(f.least));
            std::vector<std::pair<std::size_t, double>> members;
            for (std::size_t a : f.amounts) {
                members.emplace_back(a, f.amounts.size() == 1 ? unit : all.at(a).is->value);
                columns_.push_back(a);
            }
            start_[i] = first / members.front().second, lo_[i] = f.least / members.front().second, hi_[i] = f.most / members.front().second;
            members_.push_back(std::move(members));
        }
        for (auto const& t : r.targets) keys_.push_back(t.result);
    }

    batch<double> at(const vector& z) const {
        batch<double> b = base_;
        auto const all = amounts_of(b);
        for (std::size_t i = 0; i < members_.size(); ++i)
            for (auto const& [a, scale] : members_[i]) all[a].is->value = scale * z[static_cast<Eigen::Index>(i)];
        return b;
    }
    const vector& start() const { return start_; }
    const vector& lo() const { return lo_; }
    const vector& hi() const { return hi_; }
    const std::vector<std::vector<std::pair<std::size_t, double>>>& members() const { return members_; }

    struct point {
        vector z, off;  // off: (result - target)/scale
        matrix J;
    };
    // False: these amounts cannot be brewed, or a result is not reached.
    bool evaluate(const vector& z, point& p) const {
        moved_results m;
        try {
            m = differentiate(at(z), keys_, columns_);
        } catch (const file_error&) {
            return false;
        }
        auto const rows = static_cast<Eigen::Index>(keys_.size()), n = z.size();
        p.z = z, p.off.resize(rows), p.J.setZero(rows, n);
        for (Eigen::Index k = 0; k < rows; ++k) {
            auto const& t = request_.targets[static_cast<std::size_t>(k)];
            auto const& v = m.values[static_cast<std::size_t>(k)];
            if (!v || !std::isfinite(*v)) return false;
            double const scale = scale_of(t);
            p.off[k] = (*v - t.value) / scale;
            std::size_t column = 0;
            for (Eigen::Index i = 0; i < n; ++i)
                for (auto const& member : members_[static_cast<std::size_t>(i)]) p.J(k, i) += m.slopes[static_cast<std::size_t>(k)][column++] * member.second / scale;
            for (Eigen::Index i = 0; i < n; ++i)
                if (!std::isfinite(p.J(k, i))) return false;
        }
        return true;
    }

    static constexpr int most_iterations = 49;
    static constexpr double close = 1e-12, met = 1e-10;

    // Gauss-Newton on the changes and the weighted misses at once; steps that lead nowhere are halved.
    point solve(const std::vector<role>& roles, int& iterations) const {
        point here;
        vector const begin = start_.cwiseMax(lo_).cwiseMin(hi_);
        if (!evaluate(begin, here)) return here;
        vector centre = begin;
        auto const rows = here.off.size(), n = here.z.size();
        vector weight(rows);
        bool soft = false;
        for (Eigen::Index k = 0; k < rows; ++k) {
            role const r = roles[static_cast<std::size_t>(k)];
            weight[k] = r == role::hard ? 1e5 : r == role::soft ? 1e3 : 0.0;
            soft = soft || r == role::soft;
        }
        // Those that shall be met must outweigh by far the one that cannot be.
        if (soft)
            for (Eigen::Index k = 0; k < rows; ++k)
                if (weight[k] > 1e4) weight[k] = 1e6;
        auto miss = [&](const point& p) { return (weight.array() * p.off.array()).matrix().norm() / 1e5; };
        bool polishing = false;
        int used = 0;
        for (; used < most_iterations; ++used) {
            double const now = miss(here);
            if (polishing && now <= close) break;
            matrix A(rows + n, n);
            vector y(rows + n);
            A.topRows(rows) = weight.asDiagonal() * here.J;
            y.head(rows) = weight.asDiagonal() * (here.J * here.z - here.off);
            A.bottomRows(n).setIdentity();
            y.tail(n) = polishing ? here.z : centre;
            // No further than twice or half in one step: formulas far from here say little.
            vector const reach = (0.6 * here.z.cwiseAbs()).cwiseMax(0.3);
            vector const low = lo_.cwiseMax(here.z - reach), high = hi_.cwiseMin(here.z + reach);
            vector const aim = bounded_least_squares(A, y, low, high, here.z);
            vector step = aim - here.z;
            point next;
            bool moved = false;
            for (int half = 0; half < 12; ++half, step *= 0.5) {
                if (!evaluate(here.z + step, next)) continue;
                if (miss(next) <= std::max(1.5 * now, 1e-7) || (soft && half == 0)) {
                    moved = true;
                    break;
                }
            }
            if (!moved) break;
            double const size = step.cwiseAbs().maxCoeff();
            here = std::move(next);
            if (polishing && size <= 1e-15) break;
            if (!polishing && (size <= 1e-9 || used >= most_iterations - 12)) {
                // In the end only those count that shall be met exactly.
                if (soft)
                    for (Eigen::Index k = 0; k < rows; ++k)
                        if (roles[static_cast<std::size_t>(k)] == role::soft) weight[k] = 0.0;
                soft = false, polishing = true;
            }
        }
        iterations = std::max(iterations, std::min(used + 1, most_iterations));
        return here;
    }

    static bool reached(const point& p, const std::vector<role>& roles) {
        if (p.off.size() == 0) return false;
        for (Eigen::Index k = 0; k < p.off.size(); ++k)
            if (roles[static_cast<std::size_t>(k)] == role::hard && !(std::fabs(p.off[k]) <= met)) return false;
        return true;
    }

    // The targets that cannot be met are left out one by one, the one furthest off first; the closest to it that leaves
    // the others met is then looked for.
    point answer(std::vector<role>& roles, int& iterations) const {
        roles.assign(keys_.size(), role::hard);
        point p = solve(roles, iterations);
        while (!reached(p, roles) && p.off.size() > 0) {
            std::vector<Eigen::Index> order;
            for (Eigen::Index k = 0; k < p.off.size(); ++k)
                if (roles[static_cast<std::size_t>(k)] == role::hard) order.push_back(k);
            if (order.empty()) break;
            std::stable_sort(order.begin(), order.end(), [&](auto a, auto b) { return std::fabs(p.off[a]) > std::fabs(p.off[b]); });
            Eigen::Index culprit = order.front();
            for (Eigen::Index k : order) {
                auto attempt = roles;
                attempt[static_cast<std::size_t>(k)] = role::left_out;
                point const without = solve(attempt, iterations);
                if (reached(without, attempt)) {
                    culprit = k;
                    break;
                }
            }
            roles[static_cast<std::size_t>(culprit)] = role::soft;
            p = solve(roles, iterations);
        }
        return p;
    }

private:
    const batch<double>& base_;
    const plan_request& request_;
    vector start_, lo_, hi_;
    std::vector<std::vector<std::pair<std::size_t, double>>> members_;
    std::vector<std::size_t> columns_;
    std::vector<std::string> keys_;
};

// "colour_srm" -> "colour", 4 -> "4 SRM"
struct told {
    std::string noun, unit;
    double times = 1.0;
};
told told_as(std::string_view key) {
    constexpr struct {
        const char *key, *noun, *unit;
        double times;
    } all[]{{"original_gravity", "original gravity", "", 1},
            {"original_extract_degp", "original extract", " degP", 1},
            {"final_gravity", "final gravity", "", 1},
            {"apparent_attenuation", "apparent attenuation", " %", 100},
            {"real_attenuation", "real attenuation", " %", 100},
            {"alcohol_by_volume", "alcohol", " % vol", 1},
            {"alcohol_by_volume_before_priming", "alcohol before priming", " % vol", 1},
            {"alcohol_by_mass", "alcohol by mass", " % mass", 1},
            {"bitterness_bu", "bitterness", " BU", 1},
            {"bitterness_ratio", "bitterness ratio", "", 1},
            {"colour_srm", "colour", " SRM", 1},
            {"colour_ebc", "colour", " EBC", 1},
            {"volume_packaged_l", "packaged volume", " L", 1},
            {"cells_needed", "cells needed", "", 1},
            {"dry_yeast_g", "dry yeast", " g", 1},
            {"energy_kj_per_l", "energy", " kJ/L", 1},
            {"remainder_l", "remainder", " L", 1},
            {"residual_vol", "CO2 before priming", " vol", 1},
            {"carbonation_vol", "carbonation", " vol", 1},
            {"priming_sugar_g", "priming sugar", " g", 1},
            {"priming_alcohol_by_volume", "alcohol from priming", " % vol", 1},
            {"serving_pressure_bar", "serving pressure", " bar", 1},
            {"hottest_pressure_bar", "pressure at the hottest", " bar", 1},
            {"hazard_pressure_bar", "hazard pressure", " bar", 1},
            {"hazard_carbonation_vol", "hazard carbonation", " vol", 1},
            {"regulator_pressure_bar", "regulator pressure", " bar", 1}};
    for (auto const& t : all)
        if (key == t.key) return {t.noun, t.unit, t.times};
    return {std::string(key), "", 1};
}
std::string shown(std::string_view key, double value) {
    told const t = told_as(key);
    char buffer[48];
    bool const gravity = key.find("gravity") != std::string_view::npos;
    std::snprintf(buffer, sizeof buffer, gravity ? "%.4f" : "%.3g", value * t.times);
    return buffer + t.unit;
}

std::string name_of(const named_amount<double>& a) {
    std::string text = a.ingredient.empty() ? std::string() : a.ingredient + " ";
    return text + "(step " + std::to_string(a.at.step) + ", " + a.at.key + ")";
}

}  // namespace

std::string written(double value, measure in, std::string_view unit) {
    double const n = in_unit(value, in, unit);
    return unit.empty() ? plain(n) : plain(n) + " " + std::string(unit);
}

plan_result plan(std::string_view toml, const plan_request& request) {
    batch<double> base = read_text(toml);
    auto const before = forecast(base);
    planner const p(base, request);
    plan_result out;
    std::vector<role> roles;
    planner::point const found = p.answer(roles, out.iterations);
    if (found.off.size() == 0) {
        // Which target is it that the file does not reach at all?
        for (auto const& t : request.targets)
            if (!result_of(before, t.result)) throw file_error({t.line, 0, {}, "result", "target"}, "this batch has no " + told_as(t.result).noun + ": the steps that give it are missing, or a model refuses");
        throw file_error({request.free.empty() ? 0 : request.free.front().line, 0, {}, {}, "free"}, "the amounts cannot be brewed within least and most");
    }

    auto const all = amounts_of(base);
    std::vector<replacement> changes;
    for (std::size_t i = 0; i < p.members().size(); ++i) {
        auto const k = static_cast<Eigen::Index>(i);
        for (auto const& [a, scale] : p.members()[i]) {
            amount<double> const& x = *all[a].is;
            planned_amount m;
            m.at = all[a].at, m.ingredient = all[a].ingredient, m.in = x.in, m.unit = x.unit, m.before_text = x.text;
            m.before = x.value, m.after = scale * found.z[k];
            m.least = scale * p.lo()[k], m.most = scale * p.hi()[k];
            m.after_text = written(m.after, x.in, x.unit);
            double const span = 1e-9 * std::max(1.0, std::fabs(found.z[k]));
            m.at_least = found.z[k] <= p.lo()[k] + span, m.at_most = found.z[k] >= p.hi()[k] - span;
            changes.push_back({a, m.after});
            out.amounts.push_back(std::move(m));
        }
    }
    // What is told is what the new file gives, read again.
    out.text = with_amounts(toml, changes);
    batch<double> const again = read_text(out.text);
    auto const after = forecast(again);
    out.met = true;
    for (std::size_t k = 0; k < request.targets.size(); ++k) {
        plan_target const& t = request.targets[k];
        planned_target r;
        r.result = t.result, r.wanted = t.value, r.text = t.text;
        auto const v = result_of(after, t.result);
        r.reached = v ? *v : undefined;
        r.met = roles[k] == role::hard && std::fabs(r.reached - r.wanted) <= 1e-9 * std::max(1.0, std::fabs(r.wanted));
        if (!r.met) {
            out.met = false;
            told const n = told_as(t.result);
            auto const slopes = gradient(again, t.result);
            bool moves = false;
            for (auto const& m : found.J.row(static_cast<Eigen::Index>(k))) moves = moves || m != 0.0;
            r.sentence = n.noun + " " + shown(t.result, r.wanted) + " cannot be reached";
            if (!moves) {
                r.sentence += ": none of the free amounts moves it; it stays at " + shown(t.result, r.reached);
            } else {
                // Too much of it: name where most of it comes from, if that is not free.
                const derivative* most_of_it = nullptr;
                if (r.reached > r.wanted) {
                    for (std::size_t a = 0; a < slopes.size(); ++a) {
                        auto const& s = slopes[a];
                        if (!s.given || s.at.key != "mass") continue;
                        if (!most_of_it || s.slope * s.value > most_of_it->slope * most_of_it->value) most_of_it = &s;
                    }
                }
                if (most_of_it && most_of_it->slope * most_of_it->value > 0.0)
                    r.sentence += " with this much " + (most_of_it->ingredient.empty() ? "of the " + most_of_it->at.do_word : most_of_it->ingredient) + " (step " + std::to_string(most_of_it->at.step) + ")";
                else r.sentence += " within the limits given";
                r.sentence += "; the closest is " + shown(t.result, r.reached);
                std::string limits;
                for (std::size_t i = 0; i < p.members().size(); ++i) {
                    auto const& m = out.amounts;
                    auto const at = std::find_if(m.begin(), m.end(), [&](auto const& x) { return x.at.step == all[p.members()[i].front().first].at.step && x.at.line == all[p.members()[i].front().first].at.line && x.at.key == all[p.members()[i].front().first].at.key && x.ingredient == all[p.members()[i].front().first].ingredient; });
                    if (at == m.end() || !(at->at_least || at->at_most) || found.J(static_cast<Eigen::Index>(k), static_cast<Eigen::Index>(i)) == 0.0) continue;
                    limits += (limits.empty() ? "; at its limit: " : ", ") + name_of(all[p.members()[i].front().first]);
                }
                r.sentence += limits;
            }
            std::string others;
            for (std::size_t j = 0; j < request.targets.size(); ++j)
                if (j != k && roles[j] == role::hard) others += (others.empty() ? "" : ", ") + told_as(request.targets[j].result).noun + " " + shown(request.targets[j].result, request.targets[j].value);
            if (!others.empty()) r.sentence += " (with " + others + " met)";
        }
        out.targets.push_back(std::move(r));
    }
    for (auto const& o : after.outside_range) {
        bool const known = std::any_of(before.outside_range.begin(), before.outside_range.end(), [&](auto const& b) { return b.step == o.step && b.model == o.model && b.argument == o.argument; });
        if (!known) out.newly_outside.push_back(o);
    }
    for (auto const& c : after.cautions) {
        if (c.level != "caution" && c.level != "stop") continue;
        bool const known = std::any_of(before.cautions.begin(), before.cautions.end(), [&](auto const& b) { return b.id == c.id && b.level == c.level && b.step == c.step; });
        if (!known) out.new_cautions.push_back(c);
    }
    return out;
}

plan_result plan(std::string_view toml) {
    batch<double> const b = read_text(toml);
    return plan(toml, read_plan(toml, b));
}

}  // namespace wortmath::batch
