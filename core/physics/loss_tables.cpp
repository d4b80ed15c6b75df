#include "core/physics/loss_tables.h"

#include <algorithm>
#include <cmath>
#include <utility>
#include <variant>

namespace siphonwright {
namespace {

using Numbers = std::array<double, 3>;

/// What the coefficient of a form hangs on.
Numbers numbersOf(const loss_form::Wall& f)
{
    return {f.length_m, f.roughness_m, 0};
}
Numbers numbersOf(const loss_form::Local& f)
{
    return {f.constant, f.per_reynolds, f.exponent};
}
Numbers numbersOf(const loss_form::Entrance& f)
{
    return {f.constant, 0, 0};
}
Numbers numbersOf(const loss_form::Exit& /*exit*/)
{
    return {0, 0, 0};
}
Numbers numbersOf(const loss_form::Bend& f)
{
    return {f.angle_rad, f.radius_m, 0};
}
Numbers numbersOf(const loss_form::HoseEnd& f)
{
    return {f.own_bore_m, f.own_length_m, 0};
}
Numbers numbersOf(const loss_form::Step& f)
{
    return {f.next_bore_m, 0, 0};
}

/// Reynolds numbers of the nodes.
reynolds_nodes::Values reynoldsAtNodes()
{
    reynolds_nodes::Values out{};
    for (int i = 0; i < reynolds_nodes::count; ++i)
        out[static_cast<std::size_t>(i)] = std::exp(reynolds_nodes::lnAt(i));
    return out;
}

} // namespace

LossTables::Key LossTables::keyOf(const Loss& loss, double reynolds_ratio)
{
    const Numbers numbers = std::visit([](const auto& form) { return numbersOf(form); }, loss.form);
    return {loss.bore_m, double(loss.form.index()), numbers[0], numbers[1], numbers[2], reynolds_ratio};
}

const reynolds_nodes::Values& LossTables::of(const Loss& loss, double reynolds_ratio)
{
    const Key key = keyOf(loss, reynolds_ratio);
    const auto has_key = [&key](const std::shared_ptr<const Known>& one) { return one->key == key; };
    const auto known = std::find_if(known_.begin(), known_.end(), has_key);
    if (known != known_.end())
        return (*known)->K;
    const auto old = std::find_if(old_.begin(), old_.end(), has_key);
    if (old != old_.end()) {
        known_.push_back(*old);
        return (*old)->K;
    }
    static const reynolds_nodes::Values reynolds = reynoldsAtNodes();
    const auto made = std::make_shared<Known>();
    made->key = key;
    Loss plain = loss;
    plain.factor = 1;
    for (std::size_t i = 0; i < reynolds.size(); ++i)
        made->K[i] = lossCoefficient(plain, reynolds_ratio * reynolds[i]);
    ++evaluated_;
    known_.push_back(made);
    return made->K;
}

void LossTables::age()
{
    old_ = std::move(known_);
    known_.clear();
    evaluated_ = 0;
}

void LossTables::dropOld()
{
    old_.clear();
}

} // namespace siphonwright
