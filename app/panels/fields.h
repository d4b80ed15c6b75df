#pragma once

#include "app/panels/field.h"

#include <type_traits>

/// Builds rows from member access: `fields.quantity(tr("Wall"), Unit::mm, [](auto& h) -> auto& { return
/// h.wall_mm; })`. The access is generic so that one lambda both reads and writes.
namespace siphonwright::panels {

template <class T>
struct IsFact : std::false_type {};
template <class T>
struct IsFact<Fact<T>> : std::true_type {};
template <class T>
struct IsOptional : std::false_type {};
template <class T>
struct IsOptional<std::optional<T>> : std::true_type {};

template <class Part>
class Fields {
public:
    explicit Fields(Access<Part> access) : access_(std::move(access)) {}

    Form take() { return std::move(form_); }
    /// The row added last, to say more about it.
    Field& last() { return form_.back(); }
    /// A row that none of the others fits, made with the same access.
    void add(Field row) { form_.push_back(std::move(row)); }
    const Access<Part>& access() const { return access_; }

    void heading(const QString& label)
    {
        Field row;
        row.kind = Field::Kind::heading;
        row.label = label;
        form_.push_back(row);
    }

    void remark(std::function<QString(const Part&, const Sketch&)> say)
    {
        Field row;
        row.text = [access = access_, say = std::move(say)](const Sketch& sketch) {
            const Part* part = access.read(sketch);
            return part ? say(*part, sketch) : QString();
        };
        form_.push_back(row);
    }

    /// A double, an optional double or a Fact of one.
    template <class At>
    Field& quantity(const QString& label, Unit unit, At at)
    {
        using T = std::remove_cvref_t<std::invoke_result_t<At, const Part&>>;
        Field row;
        row.kind = Field::Kind::quantity;
        row.label = label;
        row.unit = unit;
        row.may_be_empty = !std::is_same_v<T, double>;
        row.number = [access = access_, at](const Sketch& sketch) -> std::optional<double> {
            const Part* part = access.read(sketch);
            if (!part)
                return std::nullopt;
            if constexpr (IsFact<T>::value)
                return at(*part).value;
            else
                return at(*part);
        };
        row.set_number = [access = access_, at](Sketch& sketch, std::optional<double> value) {
            access.change(sketch, [&](Part& part) {
                if constexpr (IsFact<T>::value)
                    enter(at(part), value);
                else if constexpr (IsOptional<T>::value)
                    at(part) = value;
                else
                    at(part) = value.value_or(at(part));
            });
        };
        if constexpr (IsFact<T>::value)
            addSource(
                row, [at](auto& part) -> auto& { return at(part).source; });
        form_.push_back(std::move(row));
        return form_.back();
    }

    template <class At>
    Field& text(const QString& label, At at, Field::Kind kind = Field::Kind::text)
    {
        Field row;
        row.kind = kind;
        row.label = label;
        row.text = [access = access_, at](const Sketch& sketch) {
            const Part* part = access.read(sketch);
            return part ? QString::fromStdString(at(*part)) : QString();
        };
        row.set_text = [access = access_, at](Sketch& sketch, const QString& typed) {
            access.change(sketch, [&](Part& part) { at(part) = typed.toStdString(); });
        };
        form_.push_back(std::move(row));
        return form_.back();
    }

    /// An enumeration or a bool, an optional or a Fact of one; the words in the enumeration's order.
    template <class At>
    Field& choice(const QString& label, const QStringList& words, At at)
    {
        using T = std::remove_cvref_t<std::invoke_result_t<At, const Part&>>;
        Field row;
        row.kind = Field::Kind::choice;
        row.label = label;
        row.choices = words;
        row.may_be_empty = IsFact<T>::value || IsOptional<T>::value;
        row.choice = [access = access_, at](const Sketch& sketch) {
            const Part* part = access.read(sketch);
            return part ? indexOf(at(*part)) : -1;
        };
        row.set_choice = [access = access_, at](Sketch& sketch, int index) {
            access.change(sketch, [&](Part& part) { choose(at(part), index); });
        };
        if constexpr (IsFact<T>::value)
            addSource(
                row, [at](auto& part) -> auto& { return at(part).source; });
        form_.push_back(std::move(row));
        return form_.back();
    }

    /// Give a row the source of something that is not a Fact (a position).
    template <class At>
    void addSource(Field& row, At at)
    {
        row.source = [access = access_, at](const Sketch& sketch) {
            const Part* part = access.read(sketch);
            return part ? at(*part) : Source::assumed;
        };
        row.set_source = [access = access_, at](Sketch& sketch, Source source) {
            access.change(sketch, [&](Part& part) { at(part) = source; });
        };
    }

    /// Three rows along, across and height over datum; the source stands at the first.
    template <class At>
    void position(const QStringList& labels, At at)
    {
        quantity(
            labels.value(0), Unit::mm, [at](auto& p) -> auto& { return at(p).x; });
        quantity(
            labels.value(1), Unit::mm, [at](auto& p) -> auto& { return at(p).z; });
        quantity(
            labels.value(2), Unit::mm, [at](auto& p) -> auto& { return at(p).y; });
    }

private:
    /// What somebody types in place of an assumption is taken as measured until told otherwise.
    template <class T>
    static void enter(Fact<T>& fact, std::optional<T> value)
    {
        if (value && (!fact.value || fact.source == Source::assumed || fact.source == Source::typical))
            fact.source = Source::measured;
        fact.value = value;
    }
    template <class T>
    static int indexOf(const T& value)
    {
        if constexpr (IsFact<T>::value)
            return value.value ? static_cast<int>(*value.value) : -1;
        else if constexpr (IsOptional<T>::value)
            return value ? static_cast<int>(*value) : -1;
        else
            return static_cast<int>(value);
    }
    template <class T>
    static void choose(T& value, int index)
    {
        if constexpr (IsFact<T>::value) {
            using Inner = typename decltype(value.value)::value_type;
            enter(value,
                  index < 0 ? std::optional<Inner>() : std::optional<Inner>(static_cast<Inner>(index)));
        } else if constexpr (IsOptional<T>::value) {
            using Inner = typename T::value_type;
            value = index < 0 ? T() : T(static_cast<Inner>(index));
        } else {
            value = static_cast<T>(index);
        }
    }

    Access<Part> access_;
    Form form_;
};

} // namespace siphonwright::panels
