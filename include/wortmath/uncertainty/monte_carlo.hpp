// The distribution of one or several outputs by drawing the inputs. JCGM 101, 7; JCGM 102, 7.8.
//
// One random stream for each block of trials, derived from the seed and the number of the block: the result does not
// depend on how many threads ran the blocks, nor in which order.
#pragma once

#include <cstdint>
#include <functional>
#include <numbers>

#include "wortmath/uncertainty/inputs.hpp"
#include "wortmath/uncertainty/parts.hpp"

namespace wortmath::uncertainty {

enum class interval_kind { symmetric, shortest };

struct monte_carlo_options {
    double probability = 0.95;
    interval_kind interval = interval_kind::symmetric;
    int digits = 2;
    std::uint64_t seed = 1;
    double most_trials = 1e7;
};

struct monte_carlo_result {
    vector value, uncertainty, low, high;
    long long trials = 0, refused = 0;
    bool converged = false;
    std::uint64_t seed = 1;
    Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor> samples;  // outputs by trials; NaN: refused
    std::optional<matrix> covariance;         // of several outputs
    std::optional<double> ellipsoid_factor;
};

// The stream of one block.
class random_stream {
public:
    random_stream(std::uint64_t seed, std::uint64_t block) {
        std::uint64_t x = mixed(seed) ^ mixed(block + 0x632be59bd9b4e019ULL);
        for (auto& s : state_) s = mixed(x += 0x9e3779b97f4a7c15ULL);
    }
    std::uint64_t bits() {
        auto const turn = [](std::uint64_t x, int k) { return (x << k) | (x >> (64 - k)); };
        std::uint64_t const result = turn(state_[1] * 5, 7) * 9, t = state_[1] << 17;
        state_[2] ^= state_[0], state_[3] ^= state_[1], state_[1] ^= state_[2], state_[0] ^= state_[3];
        state_[2] ^= t;
        state_[3] = turn(state_[3], 45);
        return result;
    }
    // Neither 0 nor 1.
    double uniform() { return (static_cast<double>(bits() >> 12) + 0.5) * 0x1p-52; }
    double normal() {
        if (spare_) {
            double const z = *spare_;
            spare_.reset();
            return z;
        }
        double const r = std::sqrt(-2.0 * std::log(uniform())), a = 2.0 * std::numbers::pi * uniform();
        spare_ = r * std::sin(a);
        return r * std::cos(a);
    }
    // Marsaglia and Tsang, for a shape above 1.
    double chi_square(double n) {
        double const d = 0.5 * n - 1.0 / 3.0, c = 1.0 / std::sqrt(9.0 * d);
        for (;;) {
            double const z = normal(), t = 1.0 + c * z, v = t * t * t;
            if (t > 0.0 && std::log(uniform()) < 0.5 * z * z + d - d * v + d * std::log(v)) return 2.0 * d * v;
        }
    }

private:
    std::uint64_t state_[4];
    std::optional<double> spare_;
    static std::uint64_t mixed(std::uint64_t x) {
        x = (x ^ (x >> 30)) * 0xbf58476d1ce4e5b9ULL;
        x = (x ^ (x >> 27)) * 0x94d049bb133111ebULL;
        return x ^ (x >> 31);
    }
};

// Draws the arguments of a model: a row for each argument, a column for each trial.
class sampler {
public:
    explicit sampler(const std::vector<input>& inputs, const std::optional<matrix>& correlations = std::nullopt) : errors_(inputs, correlations) {
        for (std::size_t i = 0; i < errors_.lines.size(); ++i) {
            auto const& l = errors_.lines[i];
            bool const scaled_t = l.of == error_lines::kind::input && l.dof < detail::infinite && l.uncertainty > 0.0;
            if (scaled_t && l.dof <= 2.0)
                throw error(l.name + " has " + detail::text_of(l.dof) + " degrees of freedom; a t distribution with so few has no standard deviation to draw. Give the instrument's uncertainty, pooled degrees of freedom, or four readings or more");
            if (!errors_.correlations) continue;
            auto const row = static_cast<Eigen::Index>(i);
            if ((errors_.correlations->row(row).array() != 0.0).count() <= 1) continue;
            if (!is_normal(l) || scaled_t)
                throw error(l.name + " is " + (scaled_t ? "a t distribution" : l.from.shape) + " and correlated by the matrix; draws with a matrix are for normal inputs only. Share the input in the places that it moves instead");
        }
        if (errors_.correlations) {
            Eigen::LDLT<matrix> const l(*errors_.correlations);
            matrix const half = matrix(l.matrixL()) * l.vectorD().cwiseMax(0.0).cwiseSqrt().asDiagonal();
            root_ = l.transpositionsP().transpose() * half;
        }
    }
    const error_lines& errors() const { return errors_; }

    matrix draw(std::uint64_t seed, std::uint64_t block, Eigen::Index trials) const {
        random_stream random(seed, block);
        auto const lines = static_cast<Eigen::Index>(errors_.lines.size());
        matrix e(lines, trials);
        for (Eigen::Index i = 0; i < lines; ++i) draw_line(errors_.lines[static_cast<std::size_t>(i)], e.row(i), random);
        if (errors_.correlations) {
            vector const u = errors_.uncertainties();
            matrix normal = e;
            for (Eigen::Index i = 0; i < lines; ++i)
                if (u[i] > 0.0) normal.row(i) /= u[i];
            matrix const joined = u.asDiagonal() * (root_ * normal);
            for (Eigen::Index i = 0; i < lines; ++i)
                if ((errors_.correlations->row(i).array() != 0.0).count() > 1) e.row(i) = joined.row(i);
        }
        matrix x = errors_.effects * e;
        x.colwise() += errors_.values;
        return x;
    }

private:
    error_lines errors_;
    matrix root_;

    static bool is_normal(const error_lines::line& l) {
        if (l.of != error_lines::kind::input) return true;
        return l.from.shape == "normal" || l.from.shape == "expanded" || l.from.shape == "critical_difference" || l.from.shape == "exact" || l.from.shape == "readings";
    }
    // Deviations from the value.
    template <class Row>
    static void draw_line(const error_lines::line& l, Row row, random_stream& random) {
        double const u = l.uncertainty;
        auto const fill = [&](auto one) {
            for (Eigen::Index k = 0; k < row.size(); ++k) row[k] = one();
        };
        if (u == 0.0) return fill([] { return 0.0; });
        if (is_normal(l)) {
            if (l.of == error_lines::kind::input && l.dof < detail::infinite) return fill([&] {
                double const z = random.normal();
                return u * z / std::sqrt(random.chi_square(l.dof) / l.dof);
            });
            return fill([&] { return u * random.normal(); });
        }
        double const a = l.from.first_parameter(), b = l.from.second_parameter();
        auto const r = [&] { return random.uniform(); };
        std::string const& shape = l.from.shape;
        if (shape == "rectangular" || shape == "resolution") return fill([&] { return a * (2.0 * r() - 1.0); });
        if (shape == "arcsine") return fill([&] { return a * std::sin(2.0 * std::numbers::pi * r()); });
        if (shape == "triangular") return fill([&] {
            double const first = r();
            return a * (first + r() - 1.0);
        });
        if (shape == "trapezoidal") return fill([&] {
            double const first = r();
            return a * ((1.0 + b) * first + (1.0 - b) * r() - 1.0);
        });
        if (shape == "curvilinear_trapezoid") return fill([&] {
            double const low = -a - b + 2.0 * b * r();
            return low - 2.0 * low * r();
        });
        if (shape == "log_normal") return fill([&] { return l.from.value * std::expm1(a * random.normal()); });
        throw error("there is no way to draw an input of the shape " + shape);
    }
};

namespace detail {

// The upper end of an interval when every refused draw counts as +infinity: for comparisons with a limit that can hurt.
inline double upper_with_refused(std::span<const double> samples, double probability) {
    std::vector<double> y(samples.begin(), samples.end());
    for (double& x : y)
        if (x != x) x = infinite;
    return interval::symmetric(y, probability).high;
}

// k_p of a block: the radius, in whitened units, that holds a share p of the draws. NaN: the outputs are dependent.
inline double sampled_ellipsoid_factor(const matrix& y, const vector& mean, const matrix& covariance, double probability) {
    vector const s = covariance.diagonal().cwiseSqrt();
    if (!(s.minCoeff() > 0.0)) return nan;
    matrix const r = s.cwiseInverse().asDiagonal() * covariance * s.cwiseInverse().asDiagonal();
    Eigen::LLT<matrix> const llt(r);
    if (llt.info() != Eigen::Success || matrix(llt.matrixL()).diagonal().minCoeff() < 1e-7) return nan;
    matrix z = s.cwiseInverse().asDiagonal() * (y.colwise() - mean);
    llt.matrixL().solveInPlace(z);
    std::vector<double> d(static_cast<std::size_t>(z.cols()));
    for (Eigen::Index k = 0; k < z.cols(); ++k) d[static_cast<std::size_t>(k)] = z.col(k).norm();
    auto const place = static_cast<std::size_t>(std::max(1LL, static_cast<long long>(std::ceil(probability * static_cast<double>(d.size()) - 1e-9)))) - 1;
    std::nth_element(d.begin(), d.begin() + static_cast<std::ptrdiff_t>(place), d.end());
    return d[place];
}

struct sample_summary {
    vector mean, deviation, low, high;
    matrix covariance;
    double largest_eigenvalue = nan, ellipsoid_factor = nan;
};
inline sample_summary summary_of(const matrix& y, double probability, interval_kind kind) {
    auto const m = y.rows();
    sample_summary s{vector(m), vector(m), vector(m), vector(m), matrix(), nan, nan};
    for (Eigen::Index j = 0; j < m; ++j) {
        std::vector<double> kept;
        kept.reserve(static_cast<std::size_t>(y.cols()));
        for (Eigen::Index k = 0; k < y.cols(); ++k)
            if (y(j, k) == y(j, k)) kept.push_back(y(j, k));
        if (kept.size() < 2) throw error("the model refused " + std::string(kept.empty() ? "every one" : "nearly all") + " of " + std::to_string(y.cols()) + " draws; the inputs lie outside what it can answer");
        double sum = 0.0, squares = 0.0;
        for (double const x : kept) sum += x;
        double const mean = sum / static_cast<double>(kept.size());
        for (double const x : kept) squares += (x - mean) * (x - mean);
        s.mean[j] = mean, s.deviation[j] = std::sqrt(squares / static_cast<double>(kept.size() - 1));
        std::sort(kept.begin(), kept.end());
        auto const ends = kind == interval_kind::symmetric ? interval::detail::symmetric_of_sorted(kept, probability) : interval::detail::shortest_of_sorted(kept, probability);
        s.low[j] = ends.low, s.high[j] = ends.high;
    }
    if (m < 2) return s;
    std::vector<Eigen::Index> whole;
    for (Eigen::Index k = 0; k < y.cols(); ++k)
        if ((y.col(k).array() == y.col(k).array()).all()) whole.push_back(k);
    if (whole.size() < 2) throw error("no draw was answered by all outputs together");
    matrix kept(m, static_cast<Eigen::Index>(whole.size()));
    for (std::size_t k = 0; k < whole.size(); ++k) kept.col(static_cast<Eigen::Index>(k)) = y.col(whole[k]);
    vector const mean = kept.rowwise().mean();
    matrix const centred = kept.colwise() - mean;
    s.covariance = centred * centred.transpose() / static_cast<double>(whole.size() - 1);
    vector const d = s.covariance.diagonal().cwiseSqrt();
    if (d.minCoeff() > 0.0) s.largest_eigenvalue = Eigen::SelfAdjointEigenSolver<matrix>(d.cwiseInverse().asDiagonal() * s.covariance * d.cwiseInverse().asDiagonal(), Eigen::EigenvaluesOnly).eigenvalues().maxCoeff();
    s.ellipsoid_factor = sampled_ellipsoid_factor(kept, mean, s.covariance, probability);
    return s;
}

}  // namespace detail

namespace monte_carlo {

// outputs(first block, number of blocks) -> for each block a matrix, outputs by trials. It may run them side by side.
using block_runner = std::function<std::vector<matrix>(std::uint64_t first, int count, Eigen::Index trials)>;

inline monte_carlo_result adaptive_over_blocks(const block_runner& run, const monte_carlo_options& o, int at_once = 1) {
    long long const m = parts::trials::minimum(o.probability);
    constexpr int first_blocks = 10;  // JCGM 102; with fewer the rule stops by luck too often
    if (!(o.most_trials >= static_cast<double>(first_blocks * m)))
        throw error("the most trials, " + detail::text_of(o.most_trials) + ", are fewer than ten blocks of " + std::to_string(m) + ", " + std::to_string(first_blocks * m) + "; the rule for stopping needs those");
    auto const most_blocks = static_cast<int>(std::min(o.most_trials / static_cast<double>(m), 1e9));
    parts::tolerance::numerical(1.0, o.digits);
    std::vector<matrix> blocks;
    std::vector<detail::sample_summary> seen;
    monte_carlo_result r;
    r.seed = o.seed;
    // sums over all trials so far, about the mean of the first block
    vector centre, sum, squares, count;
    bool settled = false;
    std::vector<matrix> waiting;
    std::size_t taken = 0;
    while (!settled && static_cast<int>(blocks.size()) < most_blocks) {
        if (taken == waiting.size()) {
            int const begun = static_cast<int>(blocks.size());
            int const want = std::min(most_blocks - begun, begun < first_blocks ? first_blocks - begun : std::max(1, at_once));
            waiting = run(static_cast<std::uint64_t>(begun), want, static_cast<Eigen::Index>(m)), taken = 0;
        }
        blocks.push_back(std::move(waiting[taken++]));
        matrix& y = blocks.back();
        // what is not a finite number is no answer
        y = y.unaryExpr([](double x) { return x - x == 0.0 ? x : detail::nan; });
        seen.push_back(detail::summary_of(y, o.probability, o.interval));
        if (blocks.size() == 1) centre = seen[0].mean, sum = squares = count = vector::Zero(y.rows());
        for (Eigen::Index k = 0; k < y.cols(); ++k) {
            bool whole = true;
            for (Eigen::Index j = 0; j < y.rows(); ++j) {
                double const d = y(j, k) - centre[j];
                if (d != d) {
                    whole = false;
                    continue;
                }
                sum[j] += d, squares[j] += d * d, count[j] += 1.0;
            }
            r.refused += !whole;
        }
        auto const h = static_cast<double>(seen.size());
        if (static_cast<int>(seen.size()) < first_blocks) continue;
        auto const steady = [&](auto of, double delta) {
            double mean = 0.0, spread = 0.0;
            for (auto const& s : seen) mean += of(s) / h;
            if (mean != mean) return true;  // not defined for these outputs
            for (auto const& s : seen) spread += (of(s) - mean) * (of(s) - mean);
            return 2.0 * std::sqrt(spread / (h - 1.0) / h) <= delta;
        };
        settled = true;
        for (Eigen::Index j = 0; settled && j < y.rows(); ++j) {
            double const mean = sum[j] / count[j], u = std::sqrt(std::max(0.0, (squares[j] - sum[j] * mean) / (count[j] - 1.0)));
            double const delta = parts::tolerance::numerical(u, o.digits);
            settled = steady([j](auto const& s) { return s.mean[j]; }, delta) && steady([j](auto const& s) { return s.deviation[j]; }, delta) && steady([j](auto const& s) { return s.low[j]; }, delta) &&
                      steady([j](auto const& s) { return s.high[j]; }, delta);
        }
        if (settled && y.rows() > 1) {
            for (auto const of : {&detail::sample_summary::largest_eigenvalue, &detail::sample_summary::ellipsoid_factor}) {
                double mean = 0.0;
                for (auto const& s : seen) mean += s.*of / h;
                if (mean == mean) settled = settled && steady([of](auto const& s) { return s.*of; }, parts::tolerance::numerical(mean, o.digits));
            }
        }
    }
    auto const outputs = blocks[0].rows();
    r.trials = m * static_cast<long long>(blocks.size());
    r.samples.resize(outputs, static_cast<Eigen::Index>(r.trials));
    for (std::size_t k = 0; k < blocks.size(); ++k) r.samples.middleCols(static_cast<Eigen::Index>(k) * static_cast<Eigen::Index>(m), static_cast<Eigen::Index>(m)) = blocks[k];
    blocks.clear();
    auto const all = detail::summary_of(r.samples, o.probability, o.interval);
    r.value = all.mean, r.uncertainty = all.deviation, r.low = all.low, r.high = all.high;
    if (outputs > 1) r.covariance = all.covariance, r.ellipsoid_factor = all.ellipsoid_factor;
    r.converged = settled && static_cast<double>(r.refused) <= 0.001 * static_cast<double>(r.trials);
    return r;
}

// A model of all outputs: arguments by trials in, outputs by trials out.
using block_model = std::function<matrix(const matrix&)>;

inline monte_carlo_result adaptive(const block_model& model, const std::vector<input>& inputs, const std::optional<matrix>& correlations = std::nullopt, const monte_carlo_options& o = {}) {
    sampler const draws(inputs, correlations);
    return adaptive_over_blocks(
        [&](std::uint64_t first, int count, Eigen::Index trials) {
            std::vector<matrix> y;
            for (int k = 0; k < count; ++k) y.push_back(model(draws.draw(o.seed, first + static_cast<std::uint64_t>(k), trials)));
            return y;
        },
        o);
}

inline monte_carlo_result adaptive(const std::vector<measurement>& models, const std::vector<input>& inputs, const std::optional<matrix>& correlations = std::nullopt, const monte_carlo_options& o = {}) {
    return adaptive(
        block_model([&](const matrix& x) {
            matrix y(static_cast<Eigen::Index>(models.size()), x.cols());
            for (Eigen::Index k = 0; k < x.cols(); ++k)
                for (std::size_t j = 0; j < models.size(); ++j) y(static_cast<Eigen::Index>(j), k) = models[j](std::span<const double>(x.col(k).data(), static_cast<std::size_t>(x.rows())));
            return y;
        }),
        inputs, correlations, o);
}

}  // namespace monte_carlo
}  // namespace wortmath::uncertainty
